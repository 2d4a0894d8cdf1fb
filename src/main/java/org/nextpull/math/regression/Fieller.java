package org.nextpull.math.regression;

import org.nextpull.math.Interval;
import org.nextpull.math.Series;
import org.nextpull.math.StudentT;

/**
 * Confidence set of a ratio of two linear functions of fitted coefficients (Fieller 1954): all ratios r for which
 * {@code numerator - r * denominator} does not differ from zero by Student's t. For the vertex of a quadratic this is the test of
 * the first derivative (Hirschberg and Lye 2005).
 */
public final class Fieller {
    private Fieller() {}

    /**
     * Set of the vertex of a fit of degree 2.
     *
     * @param confidence above 0 and below 1, 0.95 for 95 %
     * @throws IllegalArgumentException for a fit of another degree or a confidence outside its range
     */
    public static ConfidenceSet vertex(PolynomialFit fit, double confidence) {
        if (fit.degree() != 2) {
            throw new IllegalArgumentException("a vertex needs a fit of degree 2, not " + fit.degree());
        }
        ConfidenceSet standard = ratio(fit.standardised(), Series.of(0, -1, 0), Series.of(0, 0, 2), confidence);
        if (standard instanceof ConfidenceSet.Between between) {
            return new ConfidenceSet.Between(fromStandard(fit, between.interval()));
        }
        if (standard instanceof ConfidenceSet.Outside outside) {
            return new ConfidenceSet.Outside(fromStandard(fit, outside.gap()));
        }
        return standard;
    }

    private static Interval fromStandard(PolynomialFit fit, Interval interval) {
        return new Interval(fit.fromStandard(interval.low()), fit.fromStandard(interval.high()));
    }

    /**
     * Set of a ratio.
     *
     * @param numerator weights of the coefficients in the numerator
     * @param denominator weights of the coefficients in the denominator
     * @param confidence above 0 and below 1
     */
    public static ConfidenceSet ratio(LinearFit fit, Series numerator, Series denominator, double confidence) {
        double t = StudentT.of(fit.degreesOfFreedom()).twoSided(confidence);
        double above = fit.estimate(numerator).value();
        double below = fit.estimate(denominator).value();
        Covariance covariance = fit.covariance();
        // (above - r below)^2 <= t^2 var(numerator - r denominator), a quadratic in r
        double square = below * below - t * t * covariance.variance(denominator);
        double half = above * below - t * t * covariance.between(numerator, denominator);
        double constant = above * above - t * t * covariance.variance(numerator);
        double discriminant = half * half - square * constant;
        // square == 0 leaves a half line; the whole line holds it and is the cautious answer
        if (square == 0 || (square < 0 && discriminant <= 0)) {
            return new ConfidenceSet.WholeLine();
        }
        // the far root first, the near one from the product: no cancellation
        double sum = half + Math.copySign(Math.sqrt(Math.max(0, discriminant)), half);
        double first = sum / square;
        double second = sum == 0 ? 0 : constant / sum;
        Interval roots = new Interval(Math.min(first, second), Math.max(first, second));
        return square > 0 ? new ConfidenceSet.Between(roots) : new ConfidenceSet.Outside(roots);
    }
}
