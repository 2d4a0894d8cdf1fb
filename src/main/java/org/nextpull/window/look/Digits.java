package org.nextpull.window.look;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import javax.swing.JLabel;

/** A number in very large print: drawn as large as its place, from edge to edge, without the air that a line of text keeps. */
public final class Digits extends JLabel {
    private static final long serialVersionUID = 1;
    private static final FontRenderContext PLAIN = new FontRenderContext(null, true, true);
    private static final Font BOLD = new Font(Font.SANS_SERIF, Font.BOLD, 100);

    private Color ink = Color.BLACK;

    public Digits() {
        super("");
    }

    public void say(String number, Color colour) {
        ink = colour;
        if (!number.equals(getText())) {
            setText(number);
        }
        repaint();
    }

    /** Width of the number when its digits are as high as that. */
    public int widthAt(int height) {
        Rectangle2D bounds = bounds(getText());
        return (int) Math.ceil(bounds.getWidth() * height / digitHeight()) + 2;
    }

    private static Rectangle2D bounds(String text) {
        return BOLD.createGlyphVector(PLAIN, text.isEmpty() ? "0" : text).getVisualBounds();
    }

    private static double digitHeight() {
        return bounds("0").getHeight();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(widthAt(100), 100);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(ink);
        Rectangle2D zero = bounds("0");
        double scale = getHeight() / digitHeight();
        g.scale(scale, scale);
        Rectangle2D all = bounds(getText());
        g.fill(BOLD.createGlyphVector(PLAIN, getText()).getOutline((float) -all.getX(), (float) -zero.getY()));
        g.dispose();
    }
}
