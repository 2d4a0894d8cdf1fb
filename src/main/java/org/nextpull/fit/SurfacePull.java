package org.nextpull.fit;

import java.util.List;

/**
 * The readings of one pull: one a row where it swept the speed, several of one row where a speed was held and the spark stepped.
 *
 * @param day day it belongs to, from 0; pulls of one day share a level and a drift
 * @param order place in its day that drift is counted in, from 0
 * @param isHeld whether a speed was held while the spark was stepped
 * @param readings in any order; one row may be missing or stand several times
 */
public record SurfacePull(int day, double order, boolean isHeld, List<SurfaceReading> readings) {
    public SurfacePull {
        if (day < 0 || !Double.isFinite(order)) {
            throw new IllegalArgumentException("pull " + order + " of day " + day);
        }
        readings = List.copyOf(readings);
    }
}
