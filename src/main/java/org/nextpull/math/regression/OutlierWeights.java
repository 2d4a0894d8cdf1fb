package org.nextpull.math.regression;

import org.nextpull.math.Normal;
import org.nextpull.math.Series;
import org.nextpull.math.StudentT;

/**
 * Weights that take readings less seriously the further they lie from what the others say. A reading is judged by its deleted
 * residual, that is against a fit without it, turned by Student's t into standard deviations of a normal reading: a plain residual
 * over a plain scatter cannot show an outlier among eight readings, since the outlier widens the scatter. Up to 2.5 the weight is 1,
 * beyond it falls with the square, as the weights of a Student-t likelihood do. On normal readings the weights stay at 1, so that
 * nothing is lost where nothing is wrong.
 */
public final class OutlierWeights {
    private static final double CUT = 2.5;
    private static final double LEAST_WEIGHT = 1e-3;
    private static final double LEAST_FREEDOM = 0.5;
    private static final double ROUNDING = 1e-6;
    private static final int ROUNDS = 20;
    private static final double SETTLED = 1e-6;

    private OutlierWeights() {}

    /** Weights above 0, at most 1; all 1 where fewer than three degrees of freedom are left to judge by. */
    public static FitResult<Series> of(Design design, Series readings) {
        Series weights = Series.constant(readings.size(), 1);
        FitResult<LinearFit> result = LeastSquares.fit(design, readings, weights);
        if (result instanceof FitResult.Refused<LinearFit> refused) {
            return new FitResult.Refused<>(refused.why());
        }
        LinearFit fit = result.orElseThrow();
        if (fit.degreesOfFreedom() < 3) {
            return new FitResult.Fitted<>(weights);
        }
        for (int round = 0; round < ROUNDS; round++) {
            Series wanted = wanted(fit, weights);
            // half way, since full steps may swing between two answers
            Series next = wanted.combine(weights, (now, before) -> Math.max(LEAST_WEIGHT, (now + before) / 2));
            double moved = next.minus(weights).map(Math::abs).max();
            if (moved < SETTLED) {
                break;
            }
            weights = next;
            fit = LeastSquares.fit(design, readings, weights).orElseThrow();
        }
        return new FitResult.Fitted<>(weights);
    }

    private static Series wanted(LinearFit fit, Series weights) {
        double squares = fit.residualSumOfSquares();
        double freedom = weights.sum() - fit.coefficients().size();
        return Series.generate(weights.size(), row -> {
            double weight = weights.get(row);
            double own = Math.max(ROUNDING, 1 - fit.leverages().get(row));
            double residual = fit.residuals().get(row);
            double rest = Math.max(LEAST_FREEDOM, freedom - weight);
            double variance = (squares - weight * residual * residual / own) / rest;
            if (!(variance > 0)) {
                return residual == 0 ? 1 : weight;
            }
            // deleted residual over its own error: e / (1 - h) against s^2 (1 + h / (w (1 - h)))
            double deleted = Math.abs(residual) / own;
            double error = Math.sqrt(variance * (1 + (1 - own) / (weight * own)));
            double distance = deleted / error;
            if (distance <= CUT) {
                return 1;
            }
            double tail = Math.max(Double.MIN_NORMAL, StudentT.of(rest).above(distance));
            double normal = -Normal.quantile(tail);
            return normal <= CUT ? 1 : CUT * CUT / (normal * normal);
        });
    }
}
