package org.nextpull.math.regression;

import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.nextpull.math.Series;

/** Least squares of a curve that is not linear in its parameters, by Levenberg-Marquardt with capped steps. */
public final class NonlinearLeastSquares {
    /** A curve with parameters. */
    @FunctionalInterface
    public interface Curve {
        double at(double x, Series parameters);
    }

    private static final int MOST_ROUNDS = 2000;
    private static final double RELATIVE_STEP = Math.cbrt(Math.ulp(1.0));
    private static final double SETTLED = 1e-14;

    private NonlinearLeastSquares() {}

    /**
     * Fits from start values, which also say how large the parameters are; none may be 0 unless 0 is near its value on a scale of 1.
     */
    public static FitResult<NonlinearFit> fit(Curve curve, Series x, Series y, Series start) {
        if (x.size() < start.size()) {
            return new FitResult.Refused<>(FitRefusal.TOO_FEW_READINGS);
        }
        if (x.size() == start.size()) {
            return new FitResult.Refused<>(FitRefusal.NO_DEGREES_OF_FREEDOM);
        }
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .model(point -> values(curve, x, point), point -> jacobian(curve, x, point))
                .target(y.toArray())
                .start(start.toArray())
                .maxEvaluations(MOST_ROUNDS)
                .maxIterations(MOST_ROUNDS)
                .build();
        try {
            return fitted(new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(SETTLED)
                    .withParameterRelativeTolerance(SETTLED)
                    .withOrthoTolerance(SETTLED)
                    .optimize(problem));
        } catch (NotFiniteException e) {
            return new FitResult.Refused<>(FitRefusal.NOT_FINITE);
        } catch (SingularMatrixException e) {
            return new FitResult.Refused<>(FitRefusal.COLUMNS_DEPEND);
        } catch (TooManyEvaluationsException | TooManyIterationsException | ConvergenceException e) {
            return new FitResult.Refused<>(FitRefusal.NOT_SETTLED);
        }
    }

    private static FitResult<NonlinearFit> fitted(Optimum optimum) {
        int parameters = optimum.getPoint().getDimension();
        int degreesOfFreedom = optimum.getResiduals().getDimension() - parameters;
        double variance = optimum.getCost() * optimum.getCost() / degreesOfFreedom;
        // the library leaves the covariance unscaled
        double[][] matrix =
                optimum.getCovariances(SETTLED).scalarMultiply(variance).getData();
        return new FitResult.Fitted<>(new NonlinearFit(
                Series.of(optimum.getPoint().toArray()),
                Covariance.of(matrix),
                degreesOfFreedom,
                Math.sqrt(variance),
                Series.of(optimum.getResiduals().toArray())));
    }

    private static double[] values(Curve curve, Series x, double[] point) {
        for (double parameter : point) {
            requireFinite(parameter);
        }
        Series parameters = Series.of(point);
        double[] values = new double[x.size()];
        for (int row = 0; row < values.length; row++) {
            values[row] = requireFinite(curve.at(x.get(row), parameters));
        }
        return values;
    }

    /** Central differences: the error is of second order in the step, so a cube root of the rounding balances both. */
    private static double[][] jacobian(Curve curve, Series x, double[] point) {
        double[][] jacobian = new double[x.size()][point.length];
        for (int column = 0; column < point.length; column++) {
            double step = RELATIVE_STEP * (point[column] == 0 ? 1 : Math.abs(point[column]));
            double[] above = point.clone();
            double[] below = point.clone();
            above[column] += step;
            below[column] -= step;
            double[] high = values(curve, x, above);
            double[] low = values(curve, x, below);
            for (int row = 0; row < high.length; row++) {
                jacobian[row][column] = (high[row] - low[row]) / (above[column] - below[column]);
            }
        }
        return jacobian;
    }

    private static double requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new NotFiniteException();
        }
        return value;
    }

    /** Leaves the library's loop, which would go on to its cap. */
    private static final class NotFiniteException extends RuntimeException {}
}
