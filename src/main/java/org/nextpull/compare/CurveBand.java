package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.nextpull.math.Quantiles;
import org.nextpull.math.Series;
import org.nextpull.math.regression.Design;
import org.nextpull.math.regression.LeastSquares;

/**
 * The difference of two labels over speed with a band that holds at all speeds together: the largest t over the rows, drawn from the
 * fitted model (a parametric bootstrap) with a given seed. The rows of one pull go up and down together, which the draws keep; the
 * correlation is drawn in toward none, since few pulls show more of it than there is. A row's scatter is the mean of its own and of
 * all rows' scatter, so that a row whose few pulls agree by chance gets no narrow band.
 */
final class CurveBand {
    private static final int DRAWS = 4000;
    private static final double ERROR = 0.05;

    private final DayFit day;
    private final List<ComparedPull> pulls;
    private final long seed;

    CurveBand(DayFit day, List<ComparedPull> pulls, long seed) {
        this.day = day;
        this.pulls = pulls;
        this.seed = seed;
    }

    /** Rows of a label against the reference; empty unless all pulls have the same rows. */
    List<RowDifference> against(String label) {
        List<Double> speeds = speeds(pulls.get(0));
        if (speeds.isEmpty() || pulls.stream().anyMatch(pull -> !speeds(pull).equals(speeds))) {
            return List.of();
        }
        Series weights = day.fit().weights();
        Design design = day.terms().design(day.labels(), pulls);
        Series contrast = day.contrast(label, day.labels().get(0));
        Series influence = day.fit().influence(contrast);
        double[][] residuals = new double[pulls.size()][speeds.size()];
        double[] percent = new double[speeds.size()];
        List<RowDifference.Levels> levels = new ArrayList<>();
        double freedom = 0;
        for (int row = 0; row < speeds.size(); row++) {
            int place = row;
            Series values = Series.of(
                    pulls.stream().mapToDouble(pull -> pull.rows().get(place).value()));
            var fit = LeastSquares.fit(design, values, weights).orElseThrow();
            double reference = fit.coefficient(0);
            double difference = fit.estimate(contrast).value();
            levels.add(new RowDifference.Levels(reference + difference, reference));
            percent[row] = 100 * difference / reference;
            freedom = fit.degreesOfFreedom();
            for (int pull = 0; pull < pulls.size(); pull++) {
                residuals[pull][row] = 100 * fit.residuals().get(pull) / reference * Math.sqrt(weights.get(pull));
            }
        }
        RowErrors errors = new RowErrors(labelPlaces(), influence, weights, day);
        double[] standardErrors = errors.of(residuals);
        double reach = largest(design, residuals, freedom, errors);
        List<RowDifference> rows = new ArrayList<>();
        for (int row = 0; row < percent.length; row++) {
            double half = reach * standardErrors[row];
            rows.add(new RowDifference(
                    speeds.get(row),
                    levels.get(row),
                    percent[row],
                    new PercentInterval(percent[row] - half, percent[row] + half)));
        }
        return rows;
    }

    private static List<Double> speeds(ComparedPull pull) {
        return pull.rows().stream().map(ComparedPull.RowValue::rpm).toList();
    }

    private List<Integer> labelPlaces() {
        return pulls.stream().map(pull -> day.labels().indexOf(pull.label())).toList();
    }

    /** The 95 % quantile of the largest t over all rows. */
    private double largest(Design design, double[][] residuals, double freedom, RowErrors errors) {
        int rows = residuals[0].length;
        double[][] root = RowCorrelation.root(residuals, freedom);
        double[][] maker = ResidualMaker.of(design, day.fit().weights());
        RandomGenerator random = new SplittableRandom(seed);
        return Quantiles.of(Series.generate(DRAWS, draw -> {
                    double[][] noise = new double[residuals.length][];
                    for (int pull = 0; pull < noise.length; pull++) {
                        noise[pull] = RowCorrelation.draw(root, errors.relativeScatter(pull), random);
                    }
                    double[] drawn = errors.of(ResidualMaker.apply(maker, noise));
                    double most = 0;
                    for (int row = 0; row < rows; row++) {
                        most = Math.max(most, Math.abs(errors.difference(noise, row)) / drawn[row]);
                    }
                    return most;
                }))
                .at(1 - ERROR);
    }
}
