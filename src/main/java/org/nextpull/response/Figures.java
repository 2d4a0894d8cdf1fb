package org.nextpull.response;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/**
 * The corrected figures of one pull. A table of results gives no peaks and no rows.
 *
 * @param meanTorque plain mean over the even speed grid of the band
 * @param meanPower likewise for power
 * @param withinPullPercent standard error of the band average from the noise inside the pull, in percent of it; the scatter from
 *     pull to pull is larger and is what intervals use
 * @param peakTorque highest torque of the smoothed curve, which may go on beyond the band
 * @param peakPower highest power of the smoothed curve
 * @param rows torque and setting at each row's speed that the pull covered, ascending
 */
public record Figures(
        Optional<Torque> meanTorque,
        Optional<Power> meanPower,
        OptionalDouble withinPullPercent,
        Optional<TorqueAtSpeed> peakTorque,
        Optional<PowerAtSpeed> peakPower,
        List<AtSpeed> rows) {
    /**
     * Accepts a mean of either kind.
     *
     * @throws IllegalArgumentException without a mean torque and without a mean power
     */
    public Figures {
        rows = RowColumns.of(rows);
        if (meanTorque.isEmpty() && meanPower.isEmpty()) {
            throw new IllegalArgumentException("a pull with figures has a torque or a power");
        }
    }

    /** Whether any of its rows was held. */
    boolean isHeld() {
        return ((RowColumns) rows).isHeld();
    }

    /** How far apart the least and the most advance of its rows lie, degrees; 0 where none is known. */
    double advanceSpreadDeg() {
        return ((RowColumns) rows).advanceSpreadDeg();
    }

    /** The advances of its rows that are known, in degrees. */
    public double[] advancesDeg() {
        return ((RowColumns) rows).advancesDeg();
    }

    Figures withRows(List<AtSpeed> newRows) {
        return new Figures(meanTorque, meanPower, withinPullPercent, peakTorque, peakPower, newRows);
    }

    /**
     * Corrected torque at a speed.
     *
     * @param rpm speed along the axis of the curve, rpm
     * @param torque torque there
     */
    public record TorqueAtSpeed(double rpm, Torque torque) {}

    /**
     * Corrected power at a speed.
     *
     * @param rpm speed along the axis of the curve, rpm
     * @param power power there
     */
    public record PowerAtSpeed(double rpm, Power power) {}

    /**
     * One row of a pull.
     *
     * @param rpm speed of the row in rpm: a multiple of the distance between rows, or the speed that was held
     * @param torque corrected torque there
     * @param advance spark advance that was run there; empty where it is not known
     * @param lambda mixture that was measured there by the first sensor that lives; empty where none does
     * @param heldAtS middle of the plateau on the clock of the log, s; empty where the speed was swept
     */
    public record AtSpeed(
            double rpm, Torque torque, Optional<Advance> advance, Optional<Lambda> lambda, OptionalDouble heldAtS) {
        /** A row of a sweep at a mixture that is not known by speed. */
        public AtSpeed(double rpm, Torque torque, Optional<Advance> advance) {
            this(rpm, torque, advance, Optional.empty(), OptionalDouble.empty());
        }

        /** The same with the advance that stood there. */
        public AtSpeed withAdvance(Optional<Advance> stood) {
            return new AtSpeed(rpm, torque, stood, lambda, heldAtS);
        }

        /** The same at another speed. */
        public AtSpeed atRpm(double other) {
            return new AtSpeed(other, torque, advance, lambda, heldAtS);
        }
    }
}
