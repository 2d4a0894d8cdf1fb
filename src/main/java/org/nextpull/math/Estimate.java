package org.nextpull.math;

/**
 * A figure with its standard error and the degrees of freedom that the error was estimated with. The three travel together: an
 * error bar from two degrees of freedom is another thing than one from twenty.
 *
 * @param value the figure, finite
 * @param standardError at least 0
 * @param degreesOfFreedom above 0, not always whole
 */
public record Estimate(double value, double standardError, double degreesOfFreedom) {
    /**
     * Accepts infinite degrees of freedom, as of an error that is known.
     *
     * @throws IllegalArgumentException when the figure is not finite, its error is NaN, infinite or negative, or the degrees of freedom
     *     are 0, negative or NaN
     */
    public Estimate {
        if (!Double.isFinite(value) || !(standardError >= 0) || !Double.isFinite(standardError)) {
            throw new IllegalArgumentException("not an estimate: " + value + " with error " + standardError);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("no degrees of freedom: " + degreesOfFreedom);
        }
    }

    /** Half the width of the two-sided interval at that confidence, above 0 and below 1. */
    public double halfWidth(double confidence) {
        return StudentT.of(degreesOfFreedom).twoSided(confidence) * standardError;
    }

    /** Two-sided interval by Student's t. */
    public Interval interval(double confidence) {
        double half = halfWidth(confidence);
        return new Interval(value - half, value + half);
    }

    /** The same figure in another unit, {@code factor * value + offset}. */
    public Estimate rescaled(double factor, double offset) {
        return new Estimate(factor * value + offset, Math.abs(factor) * standardError, degreesOfFreedom);
    }
}
