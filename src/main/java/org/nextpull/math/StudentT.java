package org.nextpull.math;

import org.apache.commons.statistics.distribution.TDistribution;

/** Student's t distribution; degrees of freedom above 0, not only whole ones, as Welch-Satterthwaite needs them. */
public final class StudentT {
    private final TDistribution distribution;

    private StudentT(double degreesOfFreedom) {
        this.distribution = TDistribution.of(degreesOfFreedom);
    }

    /**
     * The distribution with these degrees of freedom.
     *
     * @throws IllegalArgumentException unless the degrees of freedom are above 0
     */
    public static StudentT of(double degreesOfFreedom) {
        return new StudentT(degreesOfFreedom);
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

    /**
     * Between minus and plus this value lies the given probability: 2.776 for 0.95 and 4 degrees of freedom.
     *
     * @param confidence above 0 and below 1
     * @throws IllegalArgumentException for 0, 1, what is beyond them, and NaN
     */
    public double twoSided(double confidence) {
        return distribution.inverseSurvivalProbability((1 - Probability.inside(confidence)) / 2);
    }

    /** Probability of less than {@code value}. */
    public double below(double value) {
        return distribution.cumulativeProbability(value);
    }

    /** Probability of more than {@code value}; keeps its digits far out, where one minus {@link #below} has none. */
    public double above(double value) {
        return distribution.survivalProbability(value);
    }
}
