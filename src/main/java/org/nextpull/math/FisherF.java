package org.nextpull.math;

import org.apache.commons.statistics.distribution.FDistribution;

/** The F distribution of the ratio of two sample variances. */
public final class FisherF {
    private final FDistribution distribution;

    private FisherF(double numerator, double denominator) {
        this.distribution = FDistribution.of(numerator, denominator);
    }

    /** With the degrees of freedom of numerator and denominator, each above 0. */
    public static FisherF of(double numerator, double denominator) {
        return new FisherF(numerator, denominator);
    }

    /**
     * Below this value lies the given probability.
     *
     * @param probability above 0 and below 1
     * @throws IllegalArgumentException for 0, 1, what is beyond them, and NaN
     */
    public double quantile(double probability) {
        return distribution.inverseCumulativeProbability(Probability.inside(probability));
    }

    /** Probability of more than {@code value}. */
    public double above(double value) {
        return distribution.survivalProbability(value);
    }
}
