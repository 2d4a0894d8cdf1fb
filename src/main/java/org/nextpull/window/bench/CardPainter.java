package org.nextpull.window.bench;

import java.awt.BasicStroke;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.List;
import java.util.Optional;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import org.jspecify.annotations.Nullable;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;

/** Paints one card: number and sign, setting, response, change. Struck and refused pulls are crossed out, the next one is dashed. */
final class CardPainter extends StyledPanel implements ListCellRenderer<PullStrip.Card> {
    private static final long serialVersionUID = 1;

    private transient PullStrip.@Nullable Card card;
    private boolean selected;

    CardPainter() {
        super(new BorderLayout());
        setOpaque(true);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends PullStrip.Card> list,
            PullStrip.Card value,
            int index,
            boolean isSelected,
            boolean hasFocus) {
        card = value;
        selected = isSelected;
        getAccessibleContext().setAccessibleName(value.toString());
        return this;
    }

    @Override
    protected void dress() {
        // painted anew each time
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(skin.ground());
        g.fillRect(0, 0, getWidth(), getHeight());
        if (card != null) {
            Optional<BenchPage.PullCard> pull = card.pull();
            frame(g, pull.isEmpty());
            if (pull.isPresent()) {
                paint(g, pull.get());
            } else {
                next(g, card);
            }
        }
        g.dispose();
    }

    private void frame(Graphics2D g, boolean dashed) {
        int gap = scale.space(3);
        int wide = getWidth() - 2 * gap;
        int high = getHeight() - 2 * gap;
        if (!dashed) {
            g.setColor(skin.raised());
            g.fillRect(gap, gap, wide, high);
        }
        float width = scale.space(selected ? 3 : 1);
        float[] dash = {scale.space(5), scale.space(4)};
        g.setStroke(
                dashed
                        ? new BasicStroke(
                                Math.max(1, scale.space(2)), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0)
                        : new BasicStroke(Math.max(1, width)));
        g.setColor(selected || dashed ? skin.chosen() : skin.line());
        g.drawRect(gap, gap, wide, high);
    }

    private void paint(Graphics2D g, BenchPage.PullCard pull) {
        int left = scale.space(10);
        int y = line(g, left, scale.type(20), scale.bold(15), skin.ink(), String.valueOf(pull.number()));
        Tone tone = pull.tone();
        g.setFont(scale.plain(14));
        g.setColor(skin.tone(tone));
        int sign = g.getFontMetrics().stringWidth(tone.sign());
        g.drawString(tone.sign(), getWidth() - left - sign, scale.type(20));
        List<String> setting = pull.setting();
        if (!setting.isEmpty()) {
            y = line(g, left, y, scale.bold(14), skin.ink(), setting.get(0));
        }
        if (setting.size() > 1) {
            y = line(g, left, y, scale.plain(11.5), skin.quiet(), setting.get(1));
        }
        y = line(g, left, y, scale.plain(13), skin.ink(), pull.response());
        String last = pull.mark().isEmpty() ? pull.change() : pull.mark();
        line(g, left, y, pull.mark().isEmpty() ? scale.plain(12) : scale.bold(12), skin.ink(), last);
        if (pull.tone() == Tone.PLAIN) {
            g.setColor(skin.quiet());
            g.setStroke(new BasicStroke(Math.max(1, scale.space(1))));
            int gap = scale.space(3);
            g.drawLine(gap, getHeight() - gap, getWidth() - gap, gap);
        }
    }

    private void next(Graphics2D g, PullStrip.Card next) {
        int left = scale.space(10);
        int y = line(g, left, scale.type(20), scale.bold(15), skin.ink(), String.valueOf(next.number()));
        y = line(g, left, y, scale.plain(12), skin.quiet(), "next");
        Font font = scale.bold(14);
        for (String part : next.setting().split(", ", -1)) {
            y = line(g, left, y, font, skin.ink(), part);
            font = scale.plain(11.5);
        }
    }

    /** Draws a line of text as wide as the card lets it and gives the foot of the next one. */
    private int line(Graphics2D g, int left, int foot, Font font, Color colour, String text) {
        g.setFont(font);
        g.setColor(colour);
        double room = getWidth() - 1.7 * left;
        double wide = g.getFontMetrics().stringWidth(text);
        if (wide > room) {
            g.setFont(font.deriveFont((float) (font.getSize2D() * room / wide)));
        }
        g.drawString(text, left, foot);
        return foot + scale.type(19);
    }
}
