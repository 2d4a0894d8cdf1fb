package org.nextpull.math.regression;

import org.nextpull.math.Estimate;
import org.nextpull.math.Series;

/**
 * A fitted linear model.
 *
 * @param coefficients in the order of the design, the constant first where there is one
 * @param covariance of the coefficients, scaled by the residual variance
 * @param unscaled the same for a residual variance of 1: what the design alone says
 * @param degreesOfFreedom readings less coefficients, at least 1
 * @param residualSd root of the weighted sum of squared residuals over the degrees of freedom: the scatter of a reading of weight 1
 * @param residuals reading less fitted value, not weighted
 * @param leverages share of each reading in its own fitted value, 0 to 1
 */
public record LinearFit(
        Series coefficients,
        Covariance covariance,
        Covariance unscaled,
        int degreesOfFreedom,
        double residualSd,
        Series residuals,
        Series leverages) {

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

    /** Weighted sum of squared residuals. */
    public double residualSumOfSquares() {
        return residualSd * residualSd * degreesOfFreedom;
    }

    /**
     * New coefficients that are linear in the old ones.
     *
     * @param rows the weights of the old coefficients in each new one
     */
    LinearFit transformed(double[][] rows) {
        double[] values = new double[rows.length];
        double[][] matrix = new double[rows.length][rows.length];
        double[][] ofDesign = new double[rows.length][rows.length];
        for (int row = 0; row < rows.length; row++) {
            Series weights = Series.of(rows[row]);
            values[row] = estimate(weights).value();
            for (int column = 0; column < rows.length; column++) {
                matrix[row][column] = covariance.between(weights, Series.of(rows[column]));
                ofDesign[row][column] = unscaled.between(weights, Series.of(rows[column]));
            }
        }
        return new LinearFit(
                Series.of(values),
                Covariance.of(matrix),
                Covariance.of(ofDesign),
                degreesOfFreedom,
                residualSd,
                residuals,
                leverages);
    }
}
