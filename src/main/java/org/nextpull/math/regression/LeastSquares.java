package org.nextpull.math.regression;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.nextpull.math.Estimate;
import org.nextpull.math.Series;

/**
 * Ordinary and weighted linear least squares. Columns are centred (with a constant) and scaled to length one before anything is
 * decomposed, so that whether they can be told apart does not hang on their units; the singular values of the triangular factor
 * then say so. Householder QR solves.
 */
public final class LeastSquares {
    /** Scaled columns beyond this condition number are taken as dependent: the coefficients would keep under six digits. */
    private static final double MOST_CONDITION = 1e10;

    /** A centred column shorter than this part of the column itself is rounding, so the column is constant. */
    private static final double CONSTANT = 1e-13;

    private LeastSquares() {}

    /**
     * All readings with the same weight; one reading a row of the design.
     *
     * @throws IllegalArgumentException when readings and rows of the design differ in number
     */
    public static FitResult<LinearFit> fit(Design design, Series readings) {
        return fit(design, readings, Series.constant(readings.size(), 1));
    }

    /**
     * Weighted fit.
     *
     * @param weights above 0, proportional to one over the variance of a reading
     * @throws IllegalArgumentException when readings, weights and rows of the design differ in number, or a weight is 0 or negative
     */
    public static FitResult<LinearFit> fit(Design design, Series readings, Series weights) {
        int rows = design.rows();
        if (readings.size() != rows || weights.size() != rows) {
            throw new IllegalArgumentException("readings, weights and rows of the design differ in number");
        }
        if (rows > 0 && !(weights.min() > 0)) {
            throw new IllegalArgumentException("a weight is not above 0; leave the reading out instead");
        }
        if (rows < design.coefficients()) {
            return new FitResult.Refused<>(FitResult.Refusal.TOO_FEW_READINGS);
        }
        Standardised columns = Standardised.of(design, weights);
        if (columns.hasConstant()) {
            return new FitResult.Refused<>(FitResult.Refusal.TOO_FEW_LEVELS);
        }
        QRDecomposition decomposition = new QRDecomposition(columns.matrix());
        RealMatrix triangle = decomposition
                .getR()
                .getSubMatrix(
                        0, design.columns().size() - 1, 0, design.columns().size() - 1);
        if (!(new SingularValueDecomposition(triangle).getInverseConditionNumber() > 1 / MOST_CONDITION)) {
            return new FitResult.Refused<>(FitResult.Refusal.COLUMNS_DEPEND);
        }
        if (rows == design.coefficients()) {
            return new FitResult.Refused<>(FitResult.Refusal.NO_DEGREES_OF_FREEDOM);
        }
        return new FitResult.Fitted<>(solve(columns, decomposition, triangle, readings));
    }

    private static LinearFit solve(
            Standardised columns, QRDecomposition decomposition, RealMatrix triangle, Series readings) {
        double level = columns.meanOf(readings);
        RealVector target = columns.centred(readings, level);
        RealVector slopes = decomposition.getSolver().solve(target);
        RealVector misfit = target.subtract(columns.matrix().operate(slopes));
        // a second solve for the misfit takes back rounding of the first
        slopes = slopes.add(decomposition.getSolver().solve(misfit));
        misfit = target.subtract(columns.matrix().operate(slopes));

        RealMatrix inverse = MatrixUtils.inverse(triangle);
        RealMatrix unscaled = inverse.multiply(inverse.transpose());
        int degreesOfFreedom = readings.size() - columns.coefficients();
        double variance = misfit.dotProduct(misfit) / degreesOfFreedom;
        return new LinearFit(
                columns.coefficients(slopes, level),
                columns.covariance(unscaled, variance),
                degreesOfFreedom,
                Math.sqrt(variance));
    }

    /** The design with its rows weighted and its columns centred and scaled. */
    private record Standardised(
            RealMatrix matrix, Series roots, Series means, Series lengths, boolean intercept, boolean hasConstant) {

        static Standardised of(Design design, Series weights) {
            int count = design.columns().size();
            int rows = design.rows();
            double total = weights.sum();
            double[][] cells = new double[rows][count];
            double[] means = new double[count];
            double[] lengths = new double[count];
            boolean constant = false;
            for (int column = 0; column < count; column++) {
                Series values = design.columns().get(column);
                means[column] = design.intercept() ? mean(values, weights, total) : 0;
                double squares = 0;
                double raw = 0;
                for (int row = 0; row < rows; row++) {
                    double value = values.get(row) - means[column];
                    cells[row][column] = value * Math.sqrt(weights.get(row));
                    squares += cells[row][column] * cells[row][column];
                    raw += values.get(row) * values.get(row) * weights.get(row);
                }
                lengths[column] = Math.sqrt(squares);
                constant |= !(lengths[column] > CONSTANT * Math.sqrt(raw));
                for (int row = 0; row < rows; row++) {
                    cells[row][column] /= lengths[column];
                }
            }
            Series sizes = constant ? Series.empty() : Series.of(lengths);
            return new Standardised(
                    new Array2DRowRealMatrix(cells, false),
                    weights.map(Math::sqrt),
                    Series.of(means),
                    sizes,
                    design.intercept(),
                    constant);
        }

        private static double mean(Series values, Series weights, double total) {
            double rough = 0;
            for (int row = 0; row < values.size(); row++) {
                rough += values.get(row) * weights.get(row);
            }
            rough /= total;
            double rest = 0;
            for (int row = 0; row < values.size(); row++) {
                rest += (values.get(row) - rough) * weights.get(row);
            }
            return rough + rest / total;
        }

        int coefficients() {
            return means.size() + (intercept ? 1 : 0);
        }

        double meanOf(Series readings) {
            if (!intercept) {
                return 0;
            }
            Series weights = roots.map(root -> root * root);
            return mean(readings, weights, weights.sum());
        }

        RealVector centred(Series readings, double level) {
            return MatrixUtils.createRealVector(readings.combine(roots, (reading, root) -> (reading - level) * root)
                    .toArray());
        }

        Series coefficients(RealVector slopes, double level) {
            int shift = intercept ? 1 : 0;
            double[] all = new double[coefficients()];
            double constant = level;
            for (int column = 0; column < means.size(); column++) {
                all[column + shift] = slopes.getEntry(column) / lengths.get(column);
                constant -= all[column + shift] * means.get(column);
            }
            if (intercept) {
                all[0] = constant;
            }
            return Series.of(all);
        }

        Covariance covariance(RealMatrix standardised, double variance) {
            int shift = intercept ? 1 : 0;
            int count = means.size();
            double[][] all = new double[count + shift][count + shift];
            for (int row = 0; row < count; row++) {
                for (int column = 0; column < count; column++) {
                    all[row + shift][column + shift] =
                            variance * standardised.getEntry(row, column) / (lengths.get(row) * lengths.get(column));
                }
            }
            if (intercept) {
                all[0][0] = variance / roots.map(root -> root * root).sum();
                for (int row = 1; row <= count; row++) {
                    for (int column = 1; column <= count; column++) {
                        double part = means.get(column - 1) * all[row][column];
                        all[row][0] -= part;
                        all[0][row] -= part;
                        all[0][0] += means.get(row - 1) * part;
                    }
                }
            }
            return Covariance.of(all);
        }
    }

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
}
