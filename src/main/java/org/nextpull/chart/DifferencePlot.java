package org.nextpull.chart;

import java.util.List;

/**
 * The data of a chart of the difference between two configurations over speed.
 *
 * @param title which against which
 * @param yTitle difference and unit
 * @param intervalPercent what the interval is: 95 for a 95 % interval
 * @param mean the difference over speed in rpm
 * @param interval its interval
 * @param worth the smallest difference that matters, in the unit of the axis; drawn to both sides of zero
 */
public record DifferencePlot(
        String title, String yTitle, int intervalPercent, List<Point> mean, DrawnBand interval, double worth) {
    /**
     * Accepts 0 where every difference matters.
     *
     * @throws IllegalArgumentException when the smallest difference is negative or NaN
     */
    public DifferencePlot {
        mean = List.copyOf(mean);
        if (!(worth >= 0)) {
            throw new IllegalArgumentException("a difference that matters is not negative: " + worth);
        }
    }
}
