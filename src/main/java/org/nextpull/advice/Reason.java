package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.fit.TorqueLeft;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Temperature;

/** The numbers behind an advice: what was compared, and with what. The sentences are made in {@code report}. */
public sealed interface Reason {

    /**
     * A baseline is being laid.
     *
     * @param done baseline pulls that count so far
     * @param wanted how many are wanted
     */
    record Baseline(int done, int wanted) implements Reason {}

    /**
     * The sweep goes on: where the best may lie, and what is at stake.
     *
     * @param factor what the sweep varies
     * @param evidence what the pulls so far say
     * @param listen knock is not measured: the operator must listen during this pull and mark it
     */
    record Searching(Factor factor, Evidence evidence, boolean listen) implements Reason {}

    /**
     * The mixture bracket runs with the spark backed off.
     *
     * @param backedOffDeg degrees below the lesser of best and knock limit
     * @param fromDeg that lesser advance
     */
    record BackedOff(double backedOffDeg, double fromDeg) implements Reason {}

    /** A bracket without a timing sweep before it goes rich first. */
    record RichFirst() implements Reason {}

    /**
     * A chosen setting is being proven.
     *
     * @param by what decided it
     * @param done confirming pulls that count so far
     * @param wanted how many are wanted
     * @param gainPercent fitted gain over the baseline, where both are known
     */
    record Confirming(ChosenBy by, int done, int wanted, OptionalDouble gainPercent) implements Reason {}

    /**
     * A temperature is out of its window.
     *
     * @param condition which
     * @param now its value
     * @param want the nearest value inside the window
     */
    record OutOfWindow(Condition condition, Temperature now, Temperature want) implements Reason {}

    /**
     * Knock was heard.
     *
     * @param pull number of the pull
     * @param heardAtDeg advance at which it was heard
     * @param marginDeg the plan's margin
     */
    record Knocked(int pull, double heardAtDeg, double marginDeg) implements Reason {}

    /**
     * A limit was met.
     *
     * @param limit which
     * @param pull number of the pull
     * @param worst worst value, in the project's unit of the quantity
     * @param allowed the plan's limit, in the same unit
     */
    record LimitReached(Limit limit, int pull, double worst, double allowed) implements Reason {}

    /**
     * No live channel watches what guards the way to the next setting.
     *
     * @param limits the limits that are not watched
     * @param byHand whether the operator may watch them alone and say so
     */
    record NotWatched(List<Limit> limits, boolean byHand) implements Reason {
        public NotWatched {
            limits = List.copyOf(limits);
        }
    }

    /**
     * The end of a sweep.
     *
     * @param evidence what the pulls say; empty when no curve could be fitted
     * @param pulls pulls used so far
     */
    record Ended(Optional<Evidence> evidence, int pulls) implements Reason {}

    /**
     * The first pull of a map.
     *
     * @param shiftDeg degrees that it lies from the present map
     */
    record FirstMap(double shiftDeg) implements Reason {}

    /**
     * The search for a map goes on.
     *
     * @param purpose what the pull is for
     * @param pulls pulls so far
     * @param left torque that the most torque's map, as far as it may be run next, is expected to leave
     * @param scatterPercent scatter from pull to pull that the fit works with
     * @param listen knock is not measured: the operator must listen during this pull and mark it
     */
    record MapSearch(PullPurpose purpose, int pulls, TorqueLeft left, double scatterPercent, boolean listen)
            implements Reason {}

    /**
     * The end of a day of a map.
     *
     * @param pulls pulls so far
     * @param left what stays to be had at the map of most torque
     * @param scatterPercent scatter from pull to pull that the fit works with
     */
    record MapEnded(int pulls, TorqueLeft left, double scatterPercent) implements Reason {}
}
