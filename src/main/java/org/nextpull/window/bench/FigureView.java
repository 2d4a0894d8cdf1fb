package org.nextpull.window.bench;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.report.NextStep.Figure;
import org.nextpull.window.look.TypeScale;

/** A number in large print with its name below it, and beside the name what else is worth knowing of it. */
final class FigureView extends JPanel {
    private static final long serialVersionUID = 1;
    private static final double NAME = 20;

    /** What the capitals take of the height of the number's place: the rest keeps them off the words below and above. */
    private static final double CAPITALS = 0.88;

    private final Digits number = new Digits();
    private final JLabel name = new JLabel();
    private final JLabel beside = new JLabel();

    FigureView() {
        super(new BorderLayout());
        setOpaque(false);
        JPanel below = new JPanel(new FlowLayout(FlowLayout.LEFT, 0, 0));
        below.setOpaque(false);
        below.add(name);
        below.add(beside);
        add(number, BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
    }

    /** Shows a figure; who does not see it finds the number under that accessible name. */
    void say(String accessible, Figure figure) {
        number.say(figure.number());
        number.getAccessibleContext().setAccessibleName(accessible);
        name.setText((figure.unit().isEmpty() ? figure.name() : figure.unit() + " " + figure.name()) + "   ");
        beside.setText(figure.change());
    }

    /** Colour and sizes. */
    void dress(Color ink, TypeScale scale) {
        number.ink(ink);
        name.setFont(scale.bold(NAME));
        beside.setFont(scale.plain(NAME - 2));
        name.setForeground(ink);
        beside.setForeground(ink);
    }

    /** What the number with its name needs at least, in pixels, when the number's capitals are so high. */
    static int leastHeight(TypeScale scale, int capitals) {
        return (int) Math.ceil(capitals / CAPITALS) + scale.type(NAME * 1.5);
    }

    /** A number in very large print: as large as its place lets it, with less air than a line of text keeps. */
    private static final class Digits extends JLabel {
        private static final long serialVersionUID = 1;
        private static final FontRenderContext PLAIN = new FontRenderContext(null, true, true);
        private static final Font BOLD = new Font(Font.SANS_SERIF, Font.BOLD, 100);

        /** A short number is not made taller than this share of its place's width. */
        private static final double TALLEST = 0.36;

        private Color ink = Color.BLACK;

        Digits() {
            super("");
        }

        void say(String number) {
            if (!number.equals(getText())) {
                setText(number);
            }
        }

        void ink(Color colour) {
            ink = colour;
            repaint();
        }

        private static Rectangle2D bounds(String text) {
            return BOLD.createGlyphVector(PLAIN, text.isEmpty() ? "0" : text).getVisualBounds();
        }

        private static double digitHeight() {
            return bounds("0").getHeight();
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(10, 10);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setColor(ink);
            Rectangle2D zero = bounds("0");
            Rectangle2D all = bounds(getText());
            double high = Math.min(CAPITALS * getHeight(), TALLEST * getWidth());
            double scale = Math.min(high / digitHeight(), (getWidth() - 2) / Math.max(1, all.getWidth()));
            g.translate(0, Math.max(0, (getHeight() - scale * digitHeight()) / 2));
            g.scale(scale, scale);
            g.fill(BOLD.createGlyphVector(PLAIN, getText()).getOutline((float) -all.getX(), (float) -zero.getY()));
            g.dispose();
        }
    }
}
