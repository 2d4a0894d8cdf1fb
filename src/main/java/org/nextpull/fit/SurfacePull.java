package org.nextpull.fit;

import java.util.List;
import java.util.Optional;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * The readings of one pull: one a row where it swept the speed, several of one row where a speed was held and the spark stepped.
 *
 * @param day day it belongs to, from 0; pulls of one day share a level and a drift
 * @param order place in its day that drift is counted in, from 0
 * @param isHeld whether a speed was held while the spark was stepped
 * @param readings in any order; one row may be missing or stand several times
 */
public record SurfacePull(int day, double order, boolean isHeld, List<Reading> readings) {
    public SurfacePull {
        if (day < 0 || !Double.isFinite(order)) {
            throw new IllegalArgumentException("pull " + order + " of day " + day);
        }
        readings = List.copyOf(readings);
    }

    /**
     * Torque at one speed of a pull, with the setting that stood there.
     *
     * @param row which of the rows, from 0
     * @param advance spark advance at that speed
     * @param lambda mixture at that speed, where it is known
     * @param lnTorquePercent 100 times the natural log of the torque; any unit of torque, the same in all readings
     * @param heldS seconds since a held pull went under load; 0 in a sweep of speed
     */
    public record Reading(int row, Advance advance, Optional<Lambda> lambda, double lnTorquePercent, double heldS) {
        public Reading {
            if (row < 0 || !Double.isFinite(lnTorquePercent) || !(heldS >= 0) || Double.isInfinite(heldS)) {
                throw new IllegalArgumentException(
                        "reading of row " + row + ": " + lnTorquePercent + " after " + heldS + " s");
            }
        }

        /** A reading of an accelerating or stepped pull at a mixture that is not known. */
        public static Reading of(int row, double advanceDeg, double lnTorquePercent) {
            return new Reading(row, Advance.ofDeg(advanceDeg), Optional.empty(), lnTorquePercent, 0);
        }
    }
}
