package org.nextpull.fit;

import java.util.Optional;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * Torque at one speed of a pull, with the setting that stood there.
 *
 * @param row which of the rows, from 0
 * @param advance spark advance at that speed
 * @param lambda mixture at that speed, where it is known
 * @param lnTorquePercent 100 times the natural log of the torque; any unit of torque, the same in all readings
 * @param heldS seconds since a held pull went under load; 0 in a sweep of speed
 */
public record SurfaceReading(int row, Advance advance, Optional<Lambda> lambda, double lnTorquePercent, double heldS) {
    public SurfaceReading {
        if (row < 0 || !Double.isFinite(lnTorquePercent) || !(heldS >= 0) || Double.isInfinite(heldS)) {
            throw new IllegalArgumentException(
                    "reading of row " + row + ": " + lnTorquePercent + " after " + heldS + " s");
        }
    }

    /** A reading of an accelerating or stepped pull at a mixture that is not known. */
    public static SurfaceReading of(int row, double advanceDeg, double lnTorquePercent) {
        return new SurfaceReading(row, Advance.ofDeg(advanceDeg), Optional.empty(), lnTorquePercent, 0);
    }
}
