package org.nextpull.math;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The standard normal distribution. */
public final class Normal {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private Normal() {}

    /**
     * Below this value lies the given probability.
     *
     * @param probability above 0 and below 1
     * @throws IllegalArgumentException for 0, 1, what is beyond them, and NaN
     */
    public static double quantile(double probability) {
        return STANDARD.inverseCumulativeProbability(Probability.inside(probability));
    }

    public static double density(double value) {
        return STANDARD.density(value);
    }

    public static double below(double value) {
        return STANDARD.cumulativeProbability(value);
    }

    /** Probability of more than {@code value}; keeps its digits far out. */
    public static double above(double value) {
        return STANDARD.survivalProbability(value);
    }
}
