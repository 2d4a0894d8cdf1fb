package org.nextpull.chart;

import java.util.List;

/**
 * An interval drawn along a curve.
 *
 * @param low its lower edge
 * @param high its upper edge, at the same places
 */
public record DrawnBand(List<Point> low, List<Point> high) {
    public DrawnBand {
        low = List.copyOf(low);
        high = List.copyOf(high);
    }
}
