package org.nextpull.math.regression;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.math.Estimate;
import org.nextpull.math.Series;

/**
 * A linear model whose readings fall into groups that scatter differently, with weights that resist outliers. Each group has its own
 * variance; the degrees of freedom of an estimate follow Satterthwaite. For two groups and nothing else in the model this is Welch's
 * test.
 */
public final class GroupedFit {
    private final Design design;
    private final LinearFit fit;
    private final Series weights;
    private final List<Integer> groups;
    private final List<VariancePart> scatters;
    private final double likeness;

    private GroupedFit(
            Design design,
            LinearFit fit,
            Series weights,
            List<Integer> groups,
            List<VariancePart> scatters,
            double likeness) {
        this.design = design;
        this.fit = fit;
        this.weights = weights;
        this.groups = groups;
        this.scatters = scatters;
        this.likeness = likeness;
    }

    /**
     * Fits.
     *
     * @param groups group of each reading, from 0, none empty
     * @param weights of the readings, from 0 (excluded) to 1, as {@link OutlierWeights} gives them
     * @param likeness how strongly groups are taken to scatter alike when degrees of freedom are counted, in degrees of freedom; 0 for
     *     plain Satterthwaite, which counts too few when groups are small and alike
     */
    public static FitResult<GroupedFit> fit(
            Design design, Series readings, List<Integer> groups, Series weights, double likeness) {
        List<Integer> places = List.copyOf(groups);
        return LeastSquares.fit(design, readings, weights)
                .map(fit -> new GroupedFit(design, fit, weights, places, scatters(fit, places, weights), likeness));
    }

    /** A group's share of the degrees of freedom is what its readings keep of their own: one less leverage each. */
    private static List<VariancePart> scatters(LinearFit fit, List<Integer> groups, Series weights) {
        int count = 1 + groups.stream().mapToInt(Integer::intValue).max().orElse(0);
        List<VariancePart> parts = new ArrayList<>();
        for (int group = 0; group < count; group++) {
            double squares = 0;
            double freedom = 0;
            for (int row = 0; row < groups.size(); row++) {
                if (groups.get(row) == group) {
                    squares += weights.get(row)
                            * fit.residuals().get(row)
                            * fit.residuals().get(row);
                    freedom += weights.get(row) * (1 - fit.leverages().get(row));
                }
            }
            // a group without freedom of its own borrows nothing from its exact fit
            parts.add(freedom > 1e-6 ? new VariancePart(squares / freedom, freedom) : new VariancePart(0, 1e-6));
        }
        return parts;
    }

    public LinearFit fit() {
        return fit;
    }

    /** Weights that the readings were given. */
    public Series weights() {
        return weights;
    }

    /** Variance of a reading of each group, with its degrees of freedom. */
    public List<VariancePart> scatters() {
        return List.copyOf(scatters);
    }

    /** Variance of a reading over all groups, with the degrees of freedom of all. */
    public VariancePart pooled() {
        double squares = 0;
        double freedom = 0;
        for (VariancePart part : scatters) {
            squares += part.variance() * part.degreesOfFreedom();
            freedom += part.degreesOfFreedom();
        }
        return new VariancePart(squares / freedom, freedom);
    }

    /** What each reading adds to a weighted sum of the coefficients. */
    public Series influence(Series contrast) {
        int size = contrast.size();
        double[] spread = new double[size];
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                spread[row] += fit.unscaled().get(row, column) * contrast.get(column);
            }
        }
        int shift = design.intercept() ? 1 : 0;
        return Series.generate(weights.size(), reading -> {
            double sum = shift == 1 ? spread[0] : 0;
            for (int column = 0; column < design.columns().size(); column++) {
                sum += spread[column + shift] * design.columns().get(column).get(reading);
            }
            return sum * weights.get(reading);
        });
    }

    /** A weighted sum of the coefficients. */
    public Estimate estimate(Series contrast) {
        Series influence = influence(contrast);
        VariancePart pooled = pooled();
        List<VariancePart> forFreedom = new ArrayList<>();
        double variance = 0;
        for (int group = 0; group < scatters.size(); group++) {
            VariancePart own = scatters.get(group);
            double share = share(influence, influence, group);
            variance += share * own.variance();
            double alike = (own.degreesOfFreedom() * own.variance() + likeness * pooled.variance())
                    / (own.degreesOfFreedom() + likeness);
            forFreedom.add(new VariancePart(share * alike, own.degreesOfFreedom()));
        }
        // groups of two readings own half a degree of freedom each; together they still have one
        double freedom = Math.max(VariancePart.satterthwaite(forFreedom), Math.min(1, pooled.degreesOfFreedom()));
        return new Estimate(fit.estimate(contrast).value(), Math.sqrt(variance), freedom);
    }

    /** Covariance of several weighted sums of the coefficients. */
    public Covariance covariance(List<Series> contrasts) {
        List<Series> influences = contrasts.stream().map(this::influence).toList();
        double[][] matrix = new double[contrasts.size()][contrasts.size()];
        for (int row = 0; row < matrix.length; row++) {
            for (int column = 0; column < matrix.length; column++) {
                for (int group = 0; group < scatters.size(); group++) {
                    matrix[row][column] += share(influences.get(row), influences.get(column), group)
                            * scatters.get(group).variance();
                }
            }
        }
        return Covariance.of(matrix);
    }

    private double share(Series left, Series right, int group) {
        double sum = 0;
        for (int row = 0; row < groups.size(); row++) {
            if (groups.get(row) == group) {
                sum += left.get(row) * right.get(row) / weights.get(row);
            }
        }
        return sum;
    }
}
