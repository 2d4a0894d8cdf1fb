package org.nextpull.plan;

import org.nextpull.unit.Unit;

/**
 * How pulls look in the log, table {@code [pull]}.
 *
 * @param kind what is looked for
 * @param fullLoad throttle from which the load is full, as a fraction
 * @param throwAwayFirst number of pulls at the start of the day that give no response
 * @param settleS longest settling after the throttle opened or the spark was stepped, in s
 * @param holdS shortest plateau in s
 */
public record PullFacts(Kind kind, double fullLoad, int throwAwayFirst, double settleS, double holdS) {

    /** How the engine is run. */
    public enum Kind {
        /** Told from the log. */
        AUTO,
        ACCELERATION,
        STEPS,
        HOLD
    }

    public static PullFacts defaults() {
        return new PullFacts(Kind.AUTO, Unit.PERCENT.toSi(95), 0, 2, 3);
    }
}
