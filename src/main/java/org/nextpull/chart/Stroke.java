package org.nextpull.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;

/**
 * How a line is drawn.
 *
 * @param colour its colour
 * @param width its width in CSS pixels
 * @param dash its dashes, in CSS pixels
 */
record Stroke(Color colour, float width, Dash dash) {
    private static final int PARTS = 1000;

    /** Dashes, in thousandths of a chart's width for curves and in half CSS pixels for straight lines. */
    enum Dash {
        NONE(0, 0),
        LONG(32, 8),
        MIDDLE(16, 8),
        SHORT(4, 6);

        private final int on;
        private final int off;

        Dash(int on, int off) {
            this.on = on;
            this.off = off;
        }
    }

    static Stroke solid(Color colour) {
        return new Stroke(colour, 2, Dash.NONE);
    }

    static Stroke dashed(Color colour) {
        return new Stroke(colour, 2, Dash.MIDDLE);
    }

    static Stroke dotted(Color colour) {
        return new Stroke(colour, 1.5f, Dash.SHORT);
    }

    /** Of what is to be set next. */
    static Stroke next() {
        return new Stroke(Palette.ORANGE.color(), 2.5f, Dash.LONG);
    }

    Stroke thin() {
        return new Stroke(colour, width / 2, dash);
    }

    /** The points of a curve under this stroke: cut into dashes where it has any. */
    List<Point> onto(List<Point> curve) {
        return dash == Dash.NONE ? curve : cut(curve, dash.on, dash.off);
    }

    BasicStroke basic(float scale) {
        return dash == Dash.NONE
                ? new BasicStroke(width * scale, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke(
                        width * scale,
                        BasicStroke.CAP_BUTT,
                        BasicStroke.JOIN_ROUND,
                        1,
                        new float[] {dash.on / 2f * scale, dash.off / 2f * scale},
                        0);
    }

    /**
     * A line cut into dashes: their points, with a point without a value (not a number) in each gap. The library strokes each short piece
     * of a line for itself, so that the dashes of a stroke run together where points are dense.
     *
     * @param on length of a dash in thousandths of the line's width
     * @param off length of a gap likewise
     */
    static List<Point> cut(List<Point> line, int on, int off) {
        if (line.size() < 2) {
            return line;
        }
        List<Point> dashes = new ArrayList<>();
        double from = line.get(0).x();
        double width = line.get(line.size() - 1).x() - from;
        int segment = 1;
        for (int part = 0; part <= PARTS; part += 2) {
            double x = from + width * part / PARTS;
            while (segment < line.size() - 1 && line.get(segment).x() < x) {
                segment++;
            }
            boolean drawn = part % (on + off) < on;
            if (drawn) {
                dashes.add(new Point(x, between(line.get(segment - 1), line.get(segment), x)));
            } else if (!Double.isNaN(dashes.get(dashes.size() - 1).y())) {
                dashes.add(new Point(x, Double.NaN));
            }
        }
        return dashes;
    }

    private static double between(Point left, Point right, double x) {
        double share = right.x() == left.x() ? 0 : (x - left.x()) / (right.x() - left.x());
        return left.y() + share * (right.y() - left.y());
    }
}
