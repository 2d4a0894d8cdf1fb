package org.nextpull.plan;

import java.util.List;
import java.util.Optional;
import org.nextpull.channel.SparkMap;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Span;

/**
 * The spark-timing sweep, table {@code [timing]}. With {@link Sets#OFFSET} all three advances are degrees added to the present map.
 *
 * @param sets what the operator sets
 * @param start where the sweep starts; with {@link Sets#MAP} degrees added to the present map
 * @param least the most retarded setting allowed
 * @param most the most advanced setting allowed
 * @param step in deg
 * @param map the map of the ignition
 */
public record TimingPlan(Sets sets, Advance start, Advance least, Advance most, SweepStep step, MapFacts map) {
    public static final double LARGEST_STEP_NATURAL_DEG = 2;
    public static final double LARGEST_STEP_BOOSTED_DEG = 1;
    public static final double RESOLUTION_DEG = 0.5;

    /** What the operator sets. */
    public enum Sets {
        /** One advance. */
        FLAT,
        /** An advance in each cell of the map. */
        MAP,
        /** Degrees added everywhere to the present map. */
        OFFSET
    }

    public TimingPlan {
        boolean isOutside = least.compareTo(start) > 0 || start.compareTo(most) > 0;
        if (sets != Sets.MAP && isOutside) {
            throw new IllegalArgumentException("start outside its limits: " + least + ", " + start + ", " + most);
        }
    }

    /** What is allowed, in deg. */
    public Span allowedDeg() {
        return Span.of(least.deg(), most.deg());
    }

    /** The largest step where the plan names none. */
    public static double defaultLargestStepDeg(EngineFacts.Induction induction) {
        return induction == EngineFacts.Induction.BOOSTED ? LARGEST_STEP_BOOSTED_DEG : LARGEST_STEP_NATURAL_DEG;
    }

    /**
     * The ignition's map as the plan gives it.
     *
     * @param breakpointsRpm speeds of its cells in rpm, rising; empty where the plan does not say
     * @param present what it holds before the sweep; empty where the plan does not say
     */
    public record MapFacts(List<Double> breakpointsRpm, Optional<SparkMap> present) {
        public MapFacts {
            breakpointsRpm = List.copyOf(breakpointsRpm);
        }
    }
}
