package org.nextpull.window.bench;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.ScrolledPanel;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.Tone;

/** Sentences with signs: first those on the selected pull, then those on the day. */
final class RemarksView extends ScrolledPanel {
    private static final long serialVersionUID = 1;

    /** A heading, or a sentence with its sign. */
    private record Line(Tone tone, boolean heading, Prose text) {}

    private final transient List<Line> lines = new ArrayList<>();
    private transient List<BenchPage.Remark> pull = List.of();
    private transient List<BenchPage.Remark> day = List.of();
    private String heading = "";

    RemarksView() {
        super(new StackLayout(), 18);
        getAccessibleContext().setAccessibleName("Worth knowing");
    }

    /**
     * Shows sentences.
     *
     * @param newHeading stands above those on the pull; empty without one
     */
    void show(String newHeading, List<BenchPage.Remark> newPull, List<BenchPage.Remark> newDay) {
        if (newHeading.equals(heading) && newPull.equals(pull) && newDay.equals(day)) {
            return;
        }
        heading = newHeading;
        pull = newPull;
        day = newDay;
        dress();
    }

    @Override
    protected void dress() {
        removeAll();
        lines.clear();
        ((StackLayout) getLayout()).gap(scale.type(2));
        setBackground(skin.ground());
        if (!pull.isEmpty()) {
            line(Tone.PLAIN, true, heading);
            pull.forEach(remark -> line(remark.tone(), false, remark.sentence()));
        }
        if (!day.isEmpty()) {
            line(Tone.PLAIN, true, "The day");
            day.forEach(remark -> line(remark.tone(), false, remark.sentence()));
        }
        revalidate();
        repaint();
    }

    private void line(Tone tone, boolean isHeading, String text) {
        Prose prose = new Prose(isHeading ? "Heading" : "Remark");
        prose.say(text);
        prose.dress(skin.ink(), isHeading ? scale.bold(13) : scale.plain(12.5));
        prose.setBorder(BorderFactory.createEmptyBorder(0, isHeading ? 0 : scale.type(18), 0, scale.space(6)));
        lines.add(new Line(tone, isHeading, prose));
        add(prose);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(scale.plain(12.5));
        for (Line line : lines) {
            if (!line.heading()) {
                g.setColor(skin.tone(line.tone()));
                g.drawString(
                        line.tone().sign(),
                        scale.type(2),
                        line.text().getY() + g.getFontMetrics().getAscent());
            }
        }
        g.dispose();
    }
}
