package org.nextpull.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A line cut into dashes. The library strokes each short piece of a line for itself, so that the dashes of a stroke run together where
 * points are dense; a dash is therefore made of points, and a gap of a point without a value.
 *
 * @param on length of a dash in thousandths of the line's width
 * @param off length of a gap likewise
 */
record BrokenLine(int on, int off) {
    private static final int PARTS = 1000;

    /** The points of the dashes, with a point without a value (not a number) in each gap. */
    List<Point> cut(List<Point> line) {
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
