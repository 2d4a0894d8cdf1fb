package org.nextpull.advice;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A stop that was said after an earlier pull.
 *
 * @param afterPull number of that pull
 * @param pullsSince how many pulls were run since
 * @param reopened what opened the day again; empty while the stop stands
 */
public record EarlierStop(int afterPull, int pullsSince, Optional<Reopening> reopened) {

    /**
     * What opened a day again.
     *
     * @param cause what it was
     * @param pull the pull that did; empty when it was done by hand
     */
    public record Reopening(Cause cause, OptionalInt pull) {}

    /** What can open a day again. */
    public enum Cause {
        /** A pull at a setting that was not run before the stop. */
        NEW_SETTING,
        /** Knock that forbids what was left in the engine. */
        KNOCK,
        /** A limit of the engine was met. */
        LIMIT,
        /** The operator struck a pull or lifted what one met. */
        BY_HAND
    }
}
