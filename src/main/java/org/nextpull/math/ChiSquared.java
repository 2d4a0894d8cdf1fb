package org.nextpull.math;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/** The chi-squared distribution: how far a sample variance may lie from the true one. */
public final class ChiSquared {
    private final ChiSquaredDistribution distribution;

    private ChiSquared(double degreesOfFreedom) {
        this.distribution = ChiSquaredDistribution.of(degreesOfFreedom);
    }

    /**
     * The distribution with these degrees of freedom.
     *
     * @throws IllegalArgumentException unless the degrees of freedom are above 0
     */
    public static ChiSquared of(double degreesOfFreedom) {
        return new ChiSquared(degreesOfFreedom);
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

    /**
     * Interval of the true standard deviation, equal tails, from one estimated with these degrees of freedom.
     *
     * @param estimate in any unit, which is that of the interval too; not negative
     * @param confidence above 0 and below 1
     * @throws IllegalArgumentException for a confidence of 0, 1, beyond them, or NaN
     */
    public Interval standardDeviation(double estimate, double confidence) {
        double tail = (1 - Probability.inside(confidence)) / 2;
        double degreesOfFreedom = distribution.getDegreesOfFreedom();
        return new Interval(
                estimate * Math.sqrt(degreesOfFreedom / quantile(1 - tail)),
                estimate * Math.sqrt(degreesOfFreedom / quantile(tail)));
    }
}
