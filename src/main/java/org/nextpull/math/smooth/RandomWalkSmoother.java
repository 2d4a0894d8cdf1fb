package org.nextpull.math.smooth;

import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.nextpull.math.Series;

/**
 * Smooths values that were each measured with a known variance along a line, under the belief that their second differences are
 * normal and small (a random walk of second order; Rue and Held, Gaussian Markov Random Fields, 2005, section 3.4). How small is
 * not known: the answer is averaged over a ladder of sizes, each weighted by how well it explains the values.
 */
public final class RandomWalkSmoother {
    /** Ratios of the size of a second difference to the root mean variance of the values. */
    private static final double[] SIZES = {0.03, 0.1, 0.3, 1, 3};

    private RandomWalkSmoother() {}

    /**
     * Smoothed values with their standard deviations.
     *
     * @param values one for each place
     * @param sds one for each place
     */
    public record Smoothed(Series values, Series sds) {}

    /**
     * Smooths; fewer than three values come back as they are.
     *
     * @param values measured values at evenly spaced places
     * @param variances their variances, all positive
     */
    public static Smoothed smooth(Series values, Series variances) {
        int count = values.size();
        double typical = 0;
        for (int i = 0; i < count; i++) {
            typical += variances.get(i) / count;
        }
        double[] means = new double[count];
        double[] squares = new double[count];
        double[] logWeights = new double[SIZES.length];
        Fit[] fits = new Fit[SIZES.length];
        double best = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < SIZES.length; s++) {
            fits[s] = fit(values, variances, SIZES[s] * SIZES[s] * typical);
            logWeights[s] = fits[s].logEvidence;
            best = Math.max(best, logWeights[s]);
        }
        double total = 0;
        for (int s = 0; s < SIZES.length; s++) {
            double weight = Math.exp(logWeights[s] - best);
            total += weight;
            for (int i = 0; i < count; i++) {
                double mean = fits[s].mean.getEntry(i);
                means[i] += weight * mean;
                squares[i] += weight * (mean * mean + fits[s].covariance.getEntry(i, i));
            }
        }
        double[] sds = new double[count];
        for (int i = 0; i < count; i++) {
            means[i] /= total;
            sds[i] = Math.sqrt(Math.max(0, squares[i] / total - means[i] * means[i]));
        }
        return new Smoothed(Series.of(means), Series.of(sds));
    }

    private record Fit(RealVector mean, RealMatrix covariance, double logEvidence) {}

    private static Fit fit(Series values, Series variances, double differenceVariance) {
        int count = values.size();
        RealMatrix precision = MatrixUtils.createRealMatrix(count, count);
        RealVector pull = MatrixUtils.createRealVector(new double[count]);
        double square = 0;
        for (int i = 0; i < count; i++) {
            precision.addToEntry(i, i, 1 / variances.get(i));
            pull.setEntry(i, values.get(i) / variances.get(i));
            square += values.get(i) * values.get(i) / variances.get(i);
        }
        double[] difference = {1, -2, 1};
        for (int i = 0; i + 2 < count; i++) {
            for (int row = 0; row < 3; row++) {
                for (int column = 0; column < 3; column++) {
                    precision.addToEntry(
                            i + row, i + column, difference[row] * difference[column] / differenceVariance);
                }
            }
        }
        CholeskyDecomposition cholesky = new CholeskyDecomposition(precision);
        RealVector mean = cholesky.getSolver().solve(pull);
        double logDeterminant = 0;
        for (int i = 0; i < count; i++) {
            logDeterminant += 2 * Math.log(cholesky.getL().getEntry(i, i));
        }
        double logEvidence = -Math.max(0, count - 2) * Math.log(differenceVariance) / 2
                - logDeterminant / 2
                - (square - mean.dotProduct(pull)) / 2;
        return new Fit(mean, cholesky.getSolver().getInverse(), logEvidence);
    }
}
