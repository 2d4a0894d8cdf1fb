package org.nextpull.response;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
        List<RowFigure> rows) {
    /**
     * Accepts a mean of either kind.
     *
     * @throws IllegalArgumentException without a mean torque and without a mean power
     */
    public Figures {
        rows = List.copyOf(rows);
        if (meanTorque.isEmpty() && meanPower.isEmpty()) {
            throw new IllegalArgumentException("a pull with figures has a torque or a power");
        }
    }

    Figures withRows(List<RowFigure> newRows) {
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
}
