package org.nextpull.advice.bench;

import org.nextpull.advice.PlannerDecision;

/**
 * How a day with an invented engine ended.
 *
 * @param pulls pulls run, the proof among them
 * @param left percent of the band left at the peak map, against the best that knock allows
 * @param leftOfMargin the same against the best that the plan's margin from knock allows
 * @param leftByLeave the same as the first, of the map that stays in the engine
 * @param rowsCovered share of the rows whose 90 % interval holds the truth
 * @param lambdaCovered whether the interval of the best lambda does
 * @param pastPeak furthest that any row of any pull went beyond its best, degrees
 * @param knocking pulls that knocked, heard or not
 * @param deepest deepest of them, degrees beyond the onset
 * @param reason why it ended
 * @param flat intervals of a flat ignition
 * @param most most advance that stays anywhere, degrees
 */
public record MapOutcome(
        int pulls,
        double left,
        double leftOfMargin,
        double leftByLeave,
        double rowsCovered,
        boolean lambdaCovered,
        double pastPeak,
        int knocking,
        double deepest,
        PlannerDecision.StopReason reason,
        Flat flat,
        double most) {
    /** Whether the interval of the best number, and that of what a map would gain, hold the truth. */
    public record Flat(boolean number, boolean gain) {}
}
