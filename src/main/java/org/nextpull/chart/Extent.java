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

    static Extent of(List<Point> points, ToDoubleFunction<Point> which) {
        DoubleSummaryStatistics span = points.stream().mapToDouble(which).summaryStatistics();
        if (span.getCount() == 0) {
            return new Extent(0, 1);
        }
        double width = Math.max(span.getMax() - span.getMin(), 1e-3 * Math.max(1, Math.abs(span.getMax())));
        return new Extent(span.getMin() - BELOW * width, span.getMax() + ABOVE * width);
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
