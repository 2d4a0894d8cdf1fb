package org.nextpull.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.nextpull.math.Quantiles;
import org.nextpull.math.Series;
import org.nextpull.math.regression.GroupedFit;

/**
 * Curves over speed with bands that hold at all speeds together: the difference of two labels, and the mean of each. The largest t over
 * the rows is drawn from the fitted model (a parametric bootstrap) with a given seed. The rows of one pull go up and down together,
 * which the draws keep, and what the drift of the day leaves in a difference moves all rows alike; the correlation is drawn in toward none, since few pulls show more of it than there is. A row's scatter is the
 * mean of its own and of all rows' scatter, so that a row whose few pulls agree by chance gets no narrow band. A mean curve rests on the
 * few pulls of one label, and a few agree by chance: its band is the wider of those by the label's own scatter and by that of all
 * labels together.
 */
final class CurveBand {
    private static final double ROUNDING = 1e-9;
    private static final int DRAWS = 4000;
    private static final double ERROR = 0.05;

    private final DayFit day;
    private final List<ComparedPull> pulls;
    private final long seed;
    private final List<Double> speeds;
    private final List<Series> values;
    private final List<Series> levels;

    CurveBand(DayFit day, List<ComparedPull> pulls, long seed) {
        this.day = day;
        this.pulls = pulls;
        this.seed = seed;
        this.speeds = commonSpeeds(pulls);
        this.values = IntStream.range(0, speeds.size())
                .mapToObj(row -> Series.of(
                        pulls.stream().mapToDouble(pull -> pull.rows().get(row).value())))
                .toList();
        this.levels = values.stream().map(day.fit()::coefficients).toList();
    }

    /** Rows of a label against the reference; empty unless all pulls have the same rows. */
    List<Comparison.RowDifference> against(String label) {
        Series contrast = day.contrast(label, day.labels().get(0));
        double[] halfPercents = ofDifference(contrast);
        List<Comparison.RowDifference> rows = new ArrayList<>();
        for (int row = 0; row < halfPercents.length; row++) {
            double reference = reference(row);
            double difference = sum(levels.get(row), contrast);
            double percent = 100 * difference / reference;
            rows.add(new Comparison.RowDifference(
                    speeds.get(row),
                    new Comparison.RowDifference.Levels(reference + difference, reference),
                    percent,
                    new Comparison.PercentInterval(percent - halfPercents[row], percent + halfPercents[row])));
        }
        return rows;
    }

    /** The mean curve of a label in mid-day, drift taken out; empty unless all pulls have the same rows. */
    List<ComparisonResult.LevelCurve.Row> levels(String label) {
        Series contrast = day.levelOf(label);
        double[] halfPercents = ofLevel(contrast);
        List<ComparisonResult.LevelCurve.Row> rows = new ArrayList<>();
        for (int row = 0; row < halfPercents.length; row++) {
            double level = sum(levels.get(row), contrast);
            rows.add(new ComparisonResult.LevelCurve.Row(
                    speeds.get(row),
                    new ComparisonResult.LevelCurve.Level(level, halfPercents[row] * reference(row) / 100)));
        }
        return rows;
    }

    /** Level of the reference at a row. */
    private double reference(int row) {
        return levels.get(row).get(0);
    }

    private static double sum(Series coefficients, Series contrast) {
        return coefficients.combine(contrast, (one, weight) -> one * weight).sum();
    }

    private static List<Double> commonSpeeds(List<ComparedPull> pulls) {
        List<Double> first = speeds(pulls.get(0));
        return pulls.stream().allMatch(pull -> speeds(pull).equals(first)) ? first : List.of();
    }

    private static List<Double> speeds(ComparedPull pull) {
        return pull.rows().stream().map(ComparedPull.RowValue::rpm).toList();
    }

    private List<Integer> labelPlaces() {
        return pulls.stream().map(pull -> day.labels().indexOf(pull.label())).toList();
    }

    private RowErrors errors(Series contrast) {
        return new RowErrors(labelPlaces(), day, contrast);
    }

    /** Half width of the band of a difference at each row, in percent of the reference there. */
    private double[] ofDifference(Series contrast) {
        if (speeds.isEmpty()) {
            return new double[0];
        }
        RowErrors errors = errors(contrast);
        double[][] residuals = residuals(day.fit().weights());
        double reach = largest(residuals, errors, errors::of, errors::relativeScatter);
        return Arrays.stream(errors.of(residuals)).map(error -> reach * error).toArray();
    }

    /** Half width of the band of one level, likewise. */
    private double[] ofLevel(Series contrast) {
        if (speeds.isEmpty()) {
            return new double[0];
        }
        RowErrors errors = errors(contrast);
        double[][] residuals = residuals(day.fit().weights());
        double ownReach = largest(residuals, errors, errors::of, errors::relativeScatter);
        double alikeReach = largest(residuals, errors, errors::ofAlike, pull -> 1);
        double[] own = errors.of(residuals);
        double[] alike = errors.ofAlike(residuals);
        return IntStream.range(0, own.length)
                .mapToDouble(row -> Math.max(ownReach * own[row], alikeReach * alike[row]))
                .toArray();
    }

    /** Weighted, in percent of the reference; a line a pull and a column a row. */
    private double[][] residuals(Series weights) {
        double[][] residuals = new double[pulls.size()][speeds.size()];
        for (int row = 0; row < speeds.size(); row++) {
            Series left = day.fit().residuals(values.get(row));
            for (int pull = 0; pull < pulls.size(); pull++) {
                residuals[pull][row] = 100 * left.get(pull) / reference(row) * Math.sqrt(weights.get(pull));
            }
        }
        return residuals;
    }

    /** The 95 % quantile of the largest t over all rows. */
    private double largest(
            double[][] residuals,
            RowErrors errors,
            Function<double[][], double[]> standardErrors,
            IntToDoubleFunction relativeScatter) {
        int rows = residuals[0].length;
        double[][] root = correlationRoot(residuals, errors.freedom());
        double[][] maker = residualMaker(day.fit());
        RandomGenerator random = new SplittableRandom(seed);
        return Quantiles.of(Series.generate(DRAWS, draw -> {
                    double[][] noise = new double[residuals.length][];
                    for (int pull = 0; pull < noise.length; pull++) {
                        noise[pull] = draw(root, relativeScatter.applyAsDouble(pull), random);
                    }
                    double[] drawn = standardErrors.apply(residuals(maker, noise));
                    double drift = errors.shared() * random.nextGaussian();
                    double most = 0;
                    for (int row = 0; row < rows; row++) {
                        most = Math.max(most, Math.abs(drift + errors.difference(noise, row)) / drawn[row]);
                    }
                    return most;
                }))
                .at(1 - ERROR);
    }

    /** Takes weighted readings to their weighted residuals; it hangs on the order of the pulls and their weights. */
    private static double[][] residualMaker(GroupedFit fit) {
        Series weights = fit.weights();
        int size = weights.size();
        double[][] maker = new double[size][size];
        for (int reading = 0; reading < size; reading++) {
            int one = reading;
            Series residuals =
                    fit.residuals(Series.generate(size, row -> row == one ? 1 / Math.sqrt(weights.get(row)) : 0));
            for (int row = 0; row < size; row++) {
                maker[row][reading] = residuals.get(row) * Math.sqrt(weights.get(row));
            }
        }
        return maker;
    }

    private static double[][] residuals(double[][] maker, double[][] readings) {
        double[][] residuals = new double[readings.length][readings[0].length];
        for (int row = 0; row < maker.length; row++) {
            for (int reading = 0; reading < readings.length; reading++) {
                for (int column = 0; column < readings[0].length; column++) {
                    residuals[row][column] += maker[row][reading] * readings[reading][column];
                }
            }
        }
        return residuals;
    }

    /** Lower root of the covariance of the rows; the fewer degrees of freedom, the more it is drawn in. */
    private static double[][] correlationRoot(double[][] residuals, double freedom) {
        int rows = residuals[0].length;
        double keep = freedom / (freedom + 1);
        double[][] root = new double[rows][rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column <= row; column++) {
                double sum = 0;
                for (double[] pull : residuals) {
                    sum += pull[row] * pull[column] / freedom;
                }
                if (row != column) {
                    sum *= keep;
                }
                for (int inner = 0; inner < column; inner++) {
                    sum -= root[row][inner] * root[column][inner];
                }
                if (row == column) {
                    root[row][row] = Math.sqrt(Math.max(ROUNDING * ROUNDING, sum));
                } else {
                    root[row][column] = sum / root[column][column];
                }
            }
        }
        return root;
    }

    private static double[] draw(double[][] root, double scale, RandomGenerator random) {
        int rows = root.length;
        double[] normal = new double[rows];
        for (int row = 0; row < rows; row++) {
            normal[row] = scale * random.nextGaussian();
        }
        double[] noise = new double[rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column <= row; column++) {
                noise[row] += root[row][column] * normal[column];
            }
        }
        return noise;
    }
}
