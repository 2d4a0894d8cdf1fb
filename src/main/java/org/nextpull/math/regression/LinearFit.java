package org.nextpull.math.regression;

import org.nextpull.math.Estimate;
import org.nextpull.math.Series;

/**
 * A fitted linear model.
 *
 * @param coefficients in the order of the design, the constant first where there is one
 * @param covariance of the coefficients, scaled by the residual variance
 * @param degreesOfFreedom readings less coefficients, at least 1
 * @param residualSd root of the weighted sum of squared residuals over the degrees of freedom: the scatter of a reading of weight 1
 */
public record LinearFit(Series coefficients, Covariance covariance, int degreesOfFreedom, double residualSd) {

    public double coefficient(int index) {
        return coefficients.get(index);
    }

    public double standardError(int index) {
        return covariance.standardError(index);
    }

    /** One coefficient with its error and degrees of freedom. */
    public Estimate estimate(int index) {
        return new Estimate(coefficient(index), standardError(index), degreesOfFreedom);
    }

    /** A weighted sum of the coefficients, such as a fitted value or a difference; one weight a coefficient. */
    public Estimate estimate(Series weights) {
        double value = 0;
        for (int index = 0; index < coefficients.size(); index++) {
            value += weights.get(index) * coefficients.get(index);
        }
        return new Estimate(value, Math.sqrt(covariance.variance(weights)), degreesOfFreedom);
    }
}
