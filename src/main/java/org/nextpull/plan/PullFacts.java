package org.nextpull.plan;

import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.unit.Unit;

/**
 * How pulls look in the log, table {@code [pull]}.
 *
 * @param kind what is looked for
 * @param fullLoad throttle from which the load is full, as a fraction above 0
 * @param throwAwayFirst number of pulls at the start of the day that give no response
 * @param settleS longest settling after the throttle opened or the spark was stepped, in s, not negative
 * @param holdS shortest plateau in s, positive
 * @param held where speeds are held, and how long at most
 */
public record PullFacts(Kind kind, double fullLoad, int throwAwayFirst, double settleS, double holdS, HeldSpeeds held) {

    /**
     * Where speeds are held.
     *
     * @param speedsRpm in rpm, rising; empty where the plan does not say
     * @param mostS longest time at load, in s
     */
    public record HeldSpeeds(List<Double> speedsRpm, OptionalDouble mostS) {
        public HeldSpeeds {
            speedsRpm = List.copyOf(speedsRpm);
        }

        public static HeldSpeeds unsaid() {
            return new HeldSpeeds(List.of(), OptionalDouble.empty());
        }
    }

    /** How the engine is run. */
    public enum Kind {
        /** Told from the log. */
        AUTO,
        /** Sweeps with the speed always moving, up or down. */
        ACCELERATION,
        /** Plateaus at one speed after another, up or down. */
        STEPS,
        /** One speed held while the spark is stepped. */
        HOLD
    }

    public PullFacts {
        if (!(fullLoad > 0 && fullLoad <= 1)) {
            throw new IllegalArgumentException("full load is a fraction of the throttle: " + fullLoad);
        }
        if (throwAwayFirst < 0) {
            throw new IllegalArgumentException("pulls to throw away cannot be negative: " + throwAwayFirst);
        }
        if (!(settleS >= 0 && settleS < Double.MAX_VALUE && holdS > 0 && holdS < Double.MAX_VALUE)) {
            throw new IllegalArgumentException("no times: settling " + settleS + " s, a plateau " + holdS + " s");
        }
    }

    public static PullFacts defaults() {
        return new PullFacts(Kind.AUTO, Unit.PERCENT.toSi(95), 0, 2, 3, HeldSpeeds.unsaid());
    }

    public PullFacts withThrowAwayFirst(int count) {
        return new PullFacts(kind, fullLoad, count, settleS, holdS, held);
    }
}
