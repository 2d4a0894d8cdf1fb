package org.nextpull.window.bench;

import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import org.jspecify.annotations.Nullable;
import org.nextpull.chart.SpeedPlot;
import org.nextpull.chart.SweepPlot;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.ChartCanvas;
import org.nextpull.window.work.Work;

/** The bench page: the next step left, the charts right, the pulls below, each as large as it matters. */
final class BenchView extends JPanel implements Styled {
    private static final long serialVersionUID = 1;
    private static final double LEFT = 0.44;
    private static final double UPPER_CHART = 0.55;
    private static final double STRIP = 0.68;

    private final StatusView status = new StatusView();
    private final LeadView lead = new LeadView();
    private final ConditionsView conditions = new ConditionsView();
    private final ChartCanvas<SweepPlot> sweep;
    private final ChartCanvas<SpeedPlot> speed;
    private final PullStrip strip = new PullStrip();
    private final RemarksView remarks = new RemarksView();
    private final JScrollPane stripPane;
    private final JScrollPane remarksPane;
    private transient TypeScale scale = TypeScale.of(1280, 720, Look.plain());
    private transient @Nullable BenchPage page;

    BenchView(Work work) {
        super(null);
        sweep = new ChartCanvas<>(
                work,
                "Response against the factor",
                "The first pull will be drawn here.",
                (drawing, plot) -> drawing.charts().paint(plot, drawing.surface()));
        speed = new ChartCanvas<>(
                work,
                "Torque and power over speed",
                "Curves over speed will be drawn here.",
                (drawing, plot) -> drawing.charts().paint(plot, drawing.surface()));
        stripPane = pane(
                strip,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
        remarksPane = pane(
                remarks,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        List.of(status, lead, conditions, sweep, speed, stripPane, remarksPane).forEach(this::add);
        strip.addListSelectionListener(event -> remarks());
        getAccessibleContext().setAccessibleName("Bench");
    }

    private static JScrollPane pane(JComponent inside, int vertical, int horizontal) {
        JScrollPane pane = new JScrollPane(inside, vertical, horizontal);
        pane.setBorder(BorderFactory.createEmptyBorder());
        return pane;
    }

    /** Shows a page. */
    void show(BenchPage newPage) {
        page = newPage;
        status.show(newPage);
        lead.show(newPage.lead());
        conditions.show(newPage.conditions());
        sweep.show(newPage.sweep(), newPage.sweep().map(SweepPlot::title).orElse(""));
        speed.show(newPage.speed(), newPage.speed().map(SpeedPlot::torqueTitle).orElse(""));
        strip.show(newPage.cards(), newPage.next());
        remarks();
    }

    private void remarks() {
        if (page != null) {
            Optional<PullCard> selected = strip.selected();
            remarks.show(
                    selected.map(card -> "Pull " + card.number()).orElse(""),
                    selected.map(PullCard::remarks).orElse(List.of()),
                    page.day());
            remarksPane.getVerticalScrollBar().setValue(0);
        }
    }

    /** The pull that the operator selected. */
    Optional<PullCard> selected() {
        return strip.selected();
    }

    /** Puts the focus where the arrow keys go through the pulls. */
    void focus() {
        strip.requestFocusInWindow();
    }

    /** How many pictures the charts have drawn. */
    int pictures() {
        return sweep.pictures() + speed.pictures();
    }

    @Override
    public void style(Skin skin, TypeScale newScale) {
        scale = newScale;
        setBackground(skin.ground());
        for (JScrollPane pane : List.of(stripPane, remarksPane)) {
            pane.setBackground(skin.ground());
            pane.getViewport().setBackground(skin.ground());
        }
        List.<Styled>of(status, lead, conditions, sweep, speed, strip, remarks)
                .forEach(part -> part.style(skin, newScale));
        revalidate();
        repaint();
    }

    @Override
    public void doLayout() {
        int wide = getWidth();
        int high = getHeight();
        int head = status.getPreferredSize().height;
        status.setBounds(0, 0, wide, head);
        int foot = scale.type(104) + scale.space(16);
        int middle = Math.max(0, high - head - foot);
        int left = (int) (wide * LEFT);
        int chances = conditions.getPreferredSize().height;
        lead.setBounds(0, head, left, Math.max(0, middle - chances));
        conditions.setBounds(0, head + Math.max(0, middle - chances), left, chances);
        int upper = (int) (middle * UPPER_CHART);
        sweep.setBounds(left, head, wide - left, upper);
        speed.setBounds(left, head + upper, wide - left, middle - upper);
        int gap = scale.space(8);
        int across = (int) (wide * STRIP);
        stripPane.setBounds(gap, high - foot, across - 2 * gap, foot);
        remarksPane.setBounds(across + gap, high - foot, wide - across - 2 * gap, foot - scale.space(4));
    }
}
