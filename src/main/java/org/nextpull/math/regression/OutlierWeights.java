package org.nextpull.math.regression;

import org.nextpull.math.Normal;
import org.nextpull.math.Series;
import org.nextpull.math.StudentT;

/**
 * Weights that take readings less seriously the further they lie from what the others say. A reading is judged by its deleted
 * residual, that is against what the model and the other readings foretell for it, turned by Student's t into standard deviations of a
 * normal reading: a plain residual over a plain scatter cannot show an outlier among eight readings, since the outlier widens the
 * scatter. Up to 2.5 the weight is 1, beyond it falls with the square, as the weights of a Student-t likelihood do. On normal readings
 * the weights stay at 1, so that nothing is lost where nothing is wrong.
 */
public final class OutlierWeights {
    private static final double CUT = 2.5;
    private static final double LEAST_WEIGHT = 1e-3;
    private static final double LEAST_FREEDOM = 0.5;
    private static final int ROUNDS = 20;
    private static final double SETTLED = 1e-6;

    private OutlierWeights() {}

    /** Weights above 0, at most 1; all 1 where fewer than three degrees of freedom are left to judge by. */
    public static FitResult<Series> of(Design design, Series readings, ReadingErrors errors) {
        FitResult<GroupedFit> result = GroupedFit.fit(design, readings, errors.inOneGroup());
        return result.map(first -> {
            GroupedFit fit = first;
            if (fit.pooled().degreesOfFreedom() < 3) {
                return fit.weights();
            }
            for (int round = 0; round < ROUNDS; round++) {
                // half way, since full steps may swing between two answers
                Series next = wanted(fit, readings, errors)
                        .combine(fit.weights(), (now, before) -> Math.max(LEAST_WEIGHT, (now + before) / 2));
                double moved = next.minus(fit.weights()).map(Math::abs).max();
                if (moved < SETTLED) {
                    break;
                }
                fit = GroupedFit.fit(design, readings, errors.inOneGroup().withWeights(next))
                        .orElseThrow();
            }
            return fit.weights();
        });
    }

    /**
     * With P of {@link Projection}, (P y)_i / P_ii is a reading less what the others foretell, 1 / P_ii its variance, and y'P y less
     * (P y)_i^2 / P_ii what the others say of the scatter; what other readings told of it counts beside that.
     */
    private static Series wanted(GroupedFit fit, Series readings, ReadingErrors errors) {
        Projection projection = fit.projection();
        Series rest = projection.rest(readings);
        double squares = rest.combine(readings, (left, right) -> left * right).sum();
        double freedom = fit.weights().sum() - fit.coefficients().size();
        return Series.generate(readings.size(), row -> {
            double weight = fit.weights().get(row);
            double deleted = Math.abs(rest.get(row)) / Math.sqrt(projection.rest(row));
            double told = 0;
            double left = Math.max(LEAST_FREEDOM, freedom - weight);
            if (!errors.known().isEmpty()) {
                ReadingErrors.VariancePart known =
                        errors.known().get(errors.groups().get(row));
                told = known.degreesOfFreedom() * known.variance() / (fit.ownVariance(row) * weight);
                left += known.degreesOfFreedom();
            }
            double scale = (squares - deleted * deleted + told) / left;
            if (!(scale > 0)) {
                return deleted == 0 ? 1 : weight;
            }
            // the variance of a reading of weight 1, whatever weight it has now
            double full = 1 / projection.rest(row) - fit.ownVariance(row) * (1 - weight);
            double distance = deleted / Math.sqrt(scale * Math.max(full * projection.rest(row), Double.MIN_NORMAL));
            if (distance <= CUT) {
                return 1;
            }
            double tail = Math.max(Double.MIN_NORMAL, StudentT.of(left).above(distance));
            double normal = -Normal.quantile(tail);
            return normal <= CUT ? 1 : CUT * CUT / (normal * normal);
        });
    }
}
