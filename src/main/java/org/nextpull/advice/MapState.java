package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.TorqueLeft;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * Where a day of a map stands, for people to read.
 *
 * @param present map that stood in the engine before the day; its breakpoints are the cells
 * @param last what the last pull ran, at the cells
 * @param rows the speeds of the answer, rising; none where the ignition takes no map
 * @param knockLimits what knock forbids, by speed; only speeds where it forbids something
 * @param peak map of most torque, as far as it may be run next
 * @param leftAtPeak what it leaves of what knock and the plan allow
 * @param least the least advance near enough to that
 * @param leftAtLeast what it leaves
 * @param leftByLeave what the map leaves that stays in the engine; empty while no map that was run will do
 * @param lambda best mixture, as far as it may be run next; empty where it is not swept
 * @param gainOverFlat what the map of most torque gains over the best single number; empty where there is one speed
 * @param scatterPercent scatter from pull to pull that the fit works with
 * @param driftPercent drift a pull that the fit works with
 */
public record MapState(
        SparkMap present,
        SparkMap last,
        List<AnswerRow> rows,
        List<KnockAtRow> knockLimits,
        SparkMap peak,
        TorqueLeft leftAtPeak,
        SparkMap least,
        TorqueLeft leftAtLeast,
        Optional<TorqueLeft> leftByLeave,
        Optional<Lambda> lambda,
        Optional<Gain> gainOverFlat,
        double scatterPercent,
        double driftPercent) {
    public MapState {
        rows = List.copyOf(rows);
        knockLimits = List.copyOf(knockLimits);
    }

    /**
     * What knock forbids at a speed.
     *
     * @param rpm the speed
     * @param deg the most advance that it leaves: where it was heard, less the plan's margin
     * @param pull the pull that set it
     */
    public record KnockAtRow(double rpm, double deg, int pull) {}

    /**
     * What a map gains over one number at every speed, knock not looked at.
     *
     * @param percent of torque, mean over the band
     * @param interval of it, 5 to 95 %
     */
    public record Gain(double percent, Span interval) {}
}
