package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.nextpull.math.Quantiles;
import org.nextpull.math.Series;
import org.nextpull.math.StudentT;
import org.nextpull.math.regression.Covariance;

/**
 * How small the error of each of several comparisons must be so that all of them hold together (Dunnett, JASA 50, 1955, for several
 * labels against one; Tukey for all pairs), from the correlation that the design gives them: the distribution of the largest t,
 * drawn with a given seed.
 */
record SimultaneousLevel(int size, double degreesOfFreedom, Optional<Quantiles> largest) {
    private static final int DRAWS = 40_000;
    private static final double ROUNDING = 1e-12;

    /**
     * Draws the largest t of the differences.
     *
     * @param covariance of the differences
     * @param degreesOfFreedom of their errors, taken as common
     * @param seed of the draws
     */
    static SimultaneousLevel of(Covariance covariance, double degreesOfFreedom, long seed) {
        int size = covariance.size();
        Series largest = size == 1 ? Series.of(0) : largest(covariance, degreesOfFreedom, seed);
        return new SimultaneousLevel(size, degreesOfFreedom, Optional.of(Quantiles.of(largest)));
    }

    /** All labels against the reference. */
    static SimultaneousLevel againstReference(DayFit day, long seed) {
        String reference = day.labels().get(0);
        return of(
                day,
                day.labels().stream()
                        .skip(1)
                        .map(label -> day.contrast(label, reference))
                        .toList(),
                seed);
    }

    /** Every label against every other. */
    static SimultaneousLevel allPairs(DayFit day, long seed) {
        List<Series> contrasts = new ArrayList<>();
        for (int one = 0; one < day.labels().size(); one++) {
            for (int other = one + 1; other < day.labels().size(); other++) {
                contrasts.add(day.contrast(day.labels().get(other), day.labels().get(one)));
            }
        }
        return of(day, contrasts, seed);
    }

    /** Without any scatter there is no correlation to draw from, and the error is shared out evenly. */
    private static SimultaneousLevel of(DayFit day, List<Series> contrasts, long seed) {
        Covariance covariance = day.fit().covariance(contrasts);
        double inverse = 0;
        for (int index = 0; index < contrasts.size(); index++) {
            if (!(covariance.standardError(index) > 0)) {
                return new SimultaneousLevel(contrasts.size(), 1, Optional.empty());
            }
            inverse += 1 / day.fit().estimate(contrasts.get(index)).degreesOfFreedom() / contrasts.size();
        }
        return of(covariance, 1 / inverse, seed);
    }

    /** Error that each comparison may make when all of them together may make {@code error}. */
    double each(double error) {
        return size == 1
                ? error
                : largest.map(drawn -> 2 * StudentT.of(degreesOfFreedom).above(drawn.at(1 - error)))
                        .orElse(error / size);
    }

    private static Series largest(Covariance covariance, double degreesOfFreedom, long seed) {
        int size = covariance.size();
        double[][] root = cholesky(covariance);
        RandomGenerator random = new SplittableRandom(seed);
        double[] normal = new double[size];
        return Series.generate(DRAWS, draw -> {
            for (int index = 0; index < size; index++) {
                normal[index] = random.nextGaussian();
            }
            double most = 0;
            for (int row = 0; row < size; row++) {
                double sum = 0;
                for (int column = 0; column <= row; column++) {
                    sum += root[row][column] * normal[column];
                }
                most = Math.max(most, Math.abs(sum));
            }
            return most / Math.sqrt(chiSquared(degreesOfFreedom, random) / degreesOfFreedom);
        });
    }

    /** Lower root of the correlation matrix; a difference that follows from others leaves a zero on the diagonal. */
    private static double[][] cholesky(Covariance covariance) {
        int size = covariance.size();
        double[][] root = new double[size][size];
        for (int row = 0; row < size; row++) {
            for (int column = 0; column <= row; column++) {
                double sum = covariance.get(row, column)
                        / (covariance.standardError(row) * covariance.standardError(column));
                for (int inner = 0; inner < column; inner++) {
                    sum -= root[row][inner] * root[column][inner];
                }
                if (row == column) {
                    root[row][row] = Math.sqrt(Math.max(0, sum));
                } else {
                    root[row][column] = root[column][column] > ROUNDING ? sum / root[column][column] : 0;
                }
            }
        }
        return root;
    }

    /** Marsaglia and Tsang (ACM TOMS 26, 2000): gamma of half the degrees of freedom, doubled. */
    static double chiSquared(double degreesOfFreedom, RandomGenerator random) {
        double shape = degreesOfFreedom / 2;
        if (shape < 1) {
            double lift = Math.pow(1 - random.nextDouble(), 1 / shape);
            return chiSquared(degreesOfFreedom + 2, random) * lift;
        }
        double third = shape - 1.0 / 3;
        double scale = 1 / Math.sqrt(9 * third);
        while (true) {
            double normal = random.nextGaussian();
            double cube = 1 + scale * normal;
            if (cube <= 0) {
                continue;
            }
            cube = cube * cube * cube;
            double log = Math.log(1 - random.nextDouble());
            if (log < 0.5 * normal * normal + third - third * cube + third * Math.log(cube)) {
                return 2 * third * cube;
            }
        }
    }
}
