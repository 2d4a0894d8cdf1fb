package org.nextpull.math.regression;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.nextpull.math.Interval;
import org.nextpull.math.Series;

/**
 * A polynomial fitted on a scale where the readings run from -1 to 1, so that powers of large x stay apart.
 *
 * @param standardised coefficients of the powers of {@code (x - middle) / half}, constant first
 * @param range where the readings lie
 */
public record PolynomialFit(LeastSquares.LinearFit standardised, Interval range) {

    /**
     * All readings with the same weight.
     *
     * @param degree at least 1
     * @throws IllegalArgumentException for a degree below 1, or when the numbers of x and y differ
     */
    public static FitResult<PolynomialFit> fit(Series x, Series y, int degree) {
        return fit(x, y, Series.constant(x.size(), 1), degree);
    }

    /**
     * Weighted fit.
     *
     * @param weights above 0, proportional to one over the variance of a reading
     * @param degree at least 1
     * @throws IllegalArgumentException for a degree below 1, when x, y and weights differ in number, or when a weight is 0 or negative
     */
    public static FitResult<PolynomialFit> fit(Series x, Series y, Series weights, int degree) {
        if (degree < 1) {
            throw new IllegalArgumentException("the degree is at least 1, not " + degree);
        }
        if (x.size() <= degree) {
            return new FitResult.Refused<>(FitResult.Refusal.TOO_FEW_READINGS);
        }
        if (x.distinct() <= degree) {
            return new FitResult.Refused<>(FitResult.Refusal.TOO_FEW_LEVELS);
        }
        Interval range = new Interval(x.min(), x.max());
        Series standard = x.map(value -> (value - range.middle()) / half(range));
        return LeastSquares.fit(new Design(powers(standard, degree), true), y, weights)
                .map(fit -> new PolynomialFit(fit, range));
    }

    /** The same fit with coefficients of the plain powers of x, constant first. */
    public LeastSquares.LinearFit plain() {
        int size = standardised.coefficients().size();
        double[][] rows = new double[size][size];
        for (int power = 0; power < size; power++) {
            double binomial = 1;
            for (int kept = power; kept >= 0; kept--) {
                // (x - m)^power / h^power, term x^kept
                rows[kept][power] = binomial * Math.pow(-range.middle(), power - kept) / Math.pow(half(range), power);
                binomial = binomial * kept / (power - kept + 1);
            }
        }
        List<Series> weights = Arrays.stream(rows).map(Series::of).toList();
        double[][] covariance = new double[size][size];
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                covariance[row][column] = standardised.covariance().between(weights.get(row), weights.get(column));
            }
        }
        return new LeastSquares.LinearFit(
                Series.of(weights.stream()
                        .mapToDouble(own -> standardised.estimate(own).value())),
                Covariance.of(covariance),
                standardised.degreesOfFreedom(),
                standardised.residualSd());
    }

    private static List<Series> powers(Series x, int degree) {
        return IntStream.rangeClosed(1, degree)
                .mapToObj(power -> x.map(value -> Math.pow(value, power)))
                .toList();
    }

    private static double half(Interval range) {
        return range.width() / 2;
    }
}
