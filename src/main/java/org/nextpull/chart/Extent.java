package org.nextpull.chart;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Ends of an axis. They lie a little beyond the data and off even spacing, on which the library would put its ticks onto data points.
 *
 * @param low lower end
 * @param high upper end
 */
record Extent(double low, double high) {
    private static final double BELOW = 0.0413;
    private static final double ABOVE = 0.0427;
    /** A span below this share of its values is one point, and gets an axis of the second share. */
    private static final double POINT = 1e-3;

    private static final double ALONE = 0.02;

    static Extent of(List<Point> points, ToDoubleFunction<Point> which) {
        DoubleSummaryStatistics span = points.stream().mapToDouble(which).summaryStatistics();
        if (span.getCount() == 0) {
            return new Extent(0, 1);
        }
        double size = Math.max(1, Math.abs(span.getMax()));
        double width = span.getMax() - span.getMin();
        double more = width < POINT * size ? (ALONE * size - width) / 2 : 0;
        return new Extent(span.getMin() - more - BELOW * (width + more), span.getMax() + more + ABOVE * (width + more));
    }

    double width() {
        return high - low;
    }

    /** With more room at the lower end. */
    Extent withRoomBelow(double share) {
        return new Extent(low - share * width(), high);
    }

    /** A place between the ends, 0 for the lower one. */
    double at(double share) {
        return low + share * width();
    }

    boolean contains(double value) {
        return value >= low && value <= high;
    }
}
