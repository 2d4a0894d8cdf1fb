package org.nextpull.math;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Student's t when the true value is not the supposed one: the power of a test. A normal number with mean {@code shift}, divided by
 * the root of an independent chi-squared over its degrees of freedom.
 */
public final class NoncentralT {
    private static final int STEPS = 2000;
    private static final double FAR = 1e-12;

    private final double degreesOfFreedom;
    private final double shift;

    private NoncentralT(double degreesOfFreedom, double shift) {
        this.degreesOfFreedom = degreesOfFreedom;
        this.shift = shift;
    }

    /**
     * The distribution of a t statistic when there is a true difference.
     *
     * @param degreesOfFreedom at least 1, not always whole
     * @param shift the true difference in standard errors, finite
     * @throws IllegalArgumentException when the degrees of freedom are below 1 or NaN, or the shift is not finite
     */
    public static NoncentralT of(double degreesOfFreedom, double shift) {
        if (!(degreesOfFreedom >= 1) || !Double.isFinite(shift)) {
            throw new IllegalArgumentException("no distribution with " + degreesOfFreedom + " and " + shift);
        }
        return new NoncentralT(degreesOfFreedom, shift);
    }

    /** Probability of more than {@code value}, by Simpson's rule over the root of the chi-squared. */
    public double above(double value) {
        ChiSquaredDistribution squares = ChiSquaredDistribution.of(degreesOfFreedom);
        double low = Math.sqrt(squares.inverseCumulativeProbability(FAR));
        double high = Math.sqrt(squares.inverseSurvivalProbability(FAR));
        double step = (high - low) / STEPS;
        double sum = 0;
        for (int index = 0; index <= STEPS; index++) {
            double root = low + index * step;
            int simpson = index == 0 || index == STEPS ? 1 : index % 2 != 0 ? 4 : 2;
            double density = 2 * root * squares.density(root * root);
            sum += simpson * density * Normal.above(value * root / Math.sqrt(degreesOfFreedom) - shift);
        }
        return sum * step / 3;
    }
}
