package org.nextpull.chart;

import java.util.List;

/**
 * An interval drawn along a curve.
 *
 * @param low its lower edge
 * @param high its upper edge, at the same places
 */
public record Band(List<Point> low, List<Point> high) {
    public Band {
        low = List.copyOf(low);
        high = List.copyOf(high);
    }
}
