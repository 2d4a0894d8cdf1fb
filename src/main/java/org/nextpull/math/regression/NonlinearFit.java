package org.nextpull.math.regression;

import org.nextpull.math.Estimate;
import org.nextpull.math.Series;

/**
 * A fitted curve that is not linear in its parameters; the covariance is that of the tangent plane at the solution.
 *
 * @param parameters in the order of the start values
 * @param covariance of the parameters, scaled by the residual variance
 * @param degreesOfFreedom readings less parameters, at least 1
 * @param residualSd root of the sum of squared residuals over the degrees of freedom
 * @param residuals reading less fitted value
 */
public record NonlinearFit(
        Series parameters, Covariance covariance, int degreesOfFreedom, double residualSd, Series residuals) {

    /** One parameter with its error and degrees of freedom. */
    public Estimate estimate(int index) {
        return new Estimate(parameters.get(index), covariance.standardError(index), degreesOfFreedom);
    }

    public double residualSumOfSquares() {
        return residualSd * residualSd * degreesOfFreedom;
    }
}
