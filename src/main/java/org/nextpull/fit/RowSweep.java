package org.nextpull.fit;

import java.util.List;

/**
 * One speed of the row table over the pulls of a sweep.
 *
 * @param rpm the speed
 * @param points the response at that speed of pulls that the band was fitted with too; others are left out
 */
public record RowSweep(double rpm, List<SweepPoint> points) {
    public RowSweep {
        points = List.copyOf(points);
    }
}
