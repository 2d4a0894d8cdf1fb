package org.nextpull.window.bench;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Stack;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;

/** Sentences with signs: first those on the selected pull, then those on the day. */
final class RemarksView extends JPanel implements Styled, Scrollable {
    private static final long serialVersionUID = 1;

    /** A heading, or a sentence with its sign. */
    private record Line(Tone tone, boolean heading, Prose text) {}

    private final Stack stack = new Stack();
    private final transient List<Line> lines = new ArrayList<>();
    private transient List<BenchPage.Remark> pull = List.of();
    private transient List<BenchPage.Remark> day = List.of();
    private String heading = "";
    private transient Skin skin = Skin.of(Look.plain());
    private transient TypeScale scale = TypeScale.of(1280, 720, Look.plain());

    RemarksView() {
        getAccessibleContext().setAccessibleName("Worth knowing");
        setLayout(stack);
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
        build();
    }

    private void build() {
        removeAll();
        lines.clear();
        stack.gap(scale.type(2));
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
    public void style(Skin newSkin, TypeScale newScale) {
        skin = newSkin;
        scale = newScale;
        build();
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

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return scale.type(18);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
