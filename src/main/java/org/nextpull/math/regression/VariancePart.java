package org.nextpull.math.regression;

/**
 * One of the independent parts that the variance of an estimate adds up from.
 *
 * @param variance the part, at least 0
 * @param degreesOfFreedom that it was estimated with, above 0
 */
public record VariancePart(double variance, double degreesOfFreedom) {
    /**
     * Accepts a part of 0, and infinite degrees of freedom.
     *
     * @throws IllegalArgumentException when the variance is negative or NaN, or the degrees of freedom are 0, negative or NaN
     */
    public VariancePart {
        if (!(variance >= 0) || !(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("not a variance part: " + variance + " on " + degreesOfFreedom);
        }
    }
}
