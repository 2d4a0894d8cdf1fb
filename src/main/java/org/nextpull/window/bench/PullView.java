package org.nextpull.window.bench;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GridLayout;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.chart.SpeedPlot;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;
import org.nextpull.window.page.ChartCanvas;
import org.nextpull.window.page.Work;

/** The page while a pull runs: its figures large, its curve as it comes, and a bar for the nearest limit. */
final class PullView extends StyledPanel {
    private static final long serialVersionUID = 1;
    /** Five of each pull, and at a held speed what is to be set. */
    private static final int MOST_FIGURES = 6;

    private final JLabel heading = new JLabel();
    private final JPanel numbers = new JPanel(new GridLayout(0, 1));
    private final transient List<FigureView> figures = new ArrayList<>();
    private final transient List<Tone> tones = new ArrayList<>();
    private final ChartCanvas course;
    private final LimitBar bar = new LimitBar();
    private boolean isNew;

    PullView(Work work) {
        super(new BorderLayout());
        course = new ChartCanvas(work, "Torque of this pull over the best so far", "The curve is drawn as it comes.");
        heading.getAccessibleContext().setAccessibleName("Pull in progress");
        for (int index = 0; index < MOST_FIGURES; index++) {
            figures.add(new FigureView());
            tones.add(Tone.PLAIN);
        }
        JPanel right = new JPanel(new BorderLayout());
        right.setOpaque(false);
        right.add(course, BorderLayout.CENTER);
        right.add(bar, BorderLayout.SOUTH);
        numbers.setOpaque(false);
        JPanel halves = new JPanel(new GridLayout(1, 2));
        halves.setOpaque(false);
        halves.add(numbers);
        halves.add(right);
        add(heading, BorderLayout.NORTH);
        add(halves, BorderLayout.CENTER);
    }

    void show(BenchPage.PullPage page) {
        heading.setText(page.heading());
        heading.getAccessibleContext().setAccessibleDescription(page.heading());
        if (numbers.getComponentCount() != page.figures().size()) {
            numbers.removeAll();
            figures.subList(0, page.figures().size()).forEach(numbers::add);
            numbers.revalidate();
        }
        for (int index = 0; index < page.figures().size(); index++) {
            BenchPage.PullPage.Live live = page.figures().get(index);
            figures.get(index).say("Now " + live.figure().name(), live.figure());
            tones.set(index, live.tone());
        }
        course.show(page.course(), page.course().map(SpeedPlot::title).orElse(""));
        bar.setVisible(page.nearest().isPresent());
        page.nearest().ifPresent(bar::show);
        dressFigures();
    }

    /** Shows that what is to be set is new, as long as it is. */
    void flash(boolean newSetting) {
        isNew = newSetting;
        ground();
    }

    private void ground() {
        setBackground(isNew ? skin.selection() : skin.ground());
    }

    private void dressFigures() {
        for (int index = 0; index < MOST_FIGURES; index++) {
            figures.get(index).dress(skin.text(tones.get(index)), scale);
        }
    }

    @Override
    protected void dress() {
        ground();
        setBorder(scale.margin(8, 24, 10, 12));
        type(heading, scale.bold(22), skin.ink());
        ((GridLayout) numbers.getLayout()).setVgap(scale.space(6));
        course.style(skin, scale);
        bar.setFont(scale.bold(18));
        dressFigures();
    }

    /** A bar that fills towards a limit, with a mark where the limit is; the words stand above it. */
    private final class LimitBar extends JPanel {
        private static final long serialVersionUID = 1;
        private static final double MOST = 1.1;
        private transient BenchPage.PullPage.Nearest nearest = new BenchPage.PullPage.Nearest("", 0, Tone.PLAIN);

        LimitBar() {
            setOpaque(false);
            getAccessibleContext().setAccessibleName("Nearest limit");
        }

        void show(BenchPage.PullPage.Nearest newNearest) {
            nearest = newNearest;
            getAccessibleContext().setAccessibleDescription(nearest.words());
            repaint();
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(10, scale.type(28) + scale.space(34));
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics;
            // without it letters are rounded to pixels, and words that were measured to fit need not
            g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            int words = scale.type(28);
            int high = scale.space(26);
            int left = scale.space(20);
            int wide = getWidth() - 2 * left;
            String sentence = "Nearest limit: " + nearest.words();
            double share =
                    Math.min(1, wide / (double) g.getFontMetrics(getFont()).stringWidth(sentence));
            g.setFont(getFont().deriveFont((float) (getFont().getSize2D() * share)));
            g.setColor(skin.ink());
            g.drawString(sentence, left, scale.type(20));
            g.setColor(skin.raised());
            g.fillRect(left, words, wide, high);
            g.setColor(skin.fill(nearest.tone()));
            g.fillRect(left, words, (int) (wide * Math.min(MOST, nearest.used()) / MOST), high);
            g.setColor(skin.ink());
            g.drawRect(left, words, wide, high);
            g.fillRect(
                    left + (int) (wide / MOST),
                    words - scale.space(4),
                    Math.max(2, scale.space(3)),
                    high + scale.space(8));
        }
    }
}
