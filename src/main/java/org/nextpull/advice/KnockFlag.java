package org.nextpull.advice;

import java.util.OptionalDouble;

/**
 * Knock heard in a pull, as yes or no. Flags that the operator struck are not handed to the planner.
 *
 * @param rpm speed where it was heard; empty where that is not known, and then it forbids at every speed
 * @param isOfLevel whether a graded level was too high, which says how far: half of the margin is then kept
 */
public record KnockFlag(OptionalDouble rpm, boolean isOfLevel) {
    public static KnockFlag atRpm(double rpm) {
        return new KnockFlag(OptionalDouble.of(rpm), false);
    }

    /** A graded level that was too high at a speed. */
    public static KnockFlag ofLevelAtRpm(double rpm) {
        return new KnockFlag(OptionalDouble.of(rpm), true);
    }

    public static KnockFlag somewhere() {
        return new KnockFlag(OptionalDouble.empty(), false);
    }
}
