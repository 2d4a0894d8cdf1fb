package org.nextpull.math.regression;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.nextpull.math.Series;
import org.nextpull.math.SymmetricFactor;

/**
 * Generalised least squares for readings of a known covariance V and a design X: what each reading adds to each coefficient, and the
 * matrix P = 1/V - 1/V X (X'X/V)^-1 X'/V that takes readings to what the design leaves of them (Searle, Casella, McCulloch, Variance
 * Components, 1992, section 6.6; its P).
 */
final class Projection {
    private final double[][] gain;
    private final double[][] rest;

    private Projection(double[][] gain, double[][] rest) {
        this.gain = gain;
        this.rest = rest;
    }

    /** The covariance of the readings is {@code shared} and, beside it, {@code own} for each reading alone, above 0. */
    static Projection of(Design design, Covariance shared, double[] own) {
        double[][] covariance = shared.toMatrix();
        for (int row = 0; row < own.length; row++) {
            covariance[row][row] += own[row];
        }
        Array2DRowRealMatrix inverse = inverse(covariance);
        Array2DRowRealMatrix columns = design.matrix();
        Array2DRowRealMatrix weighted = inverse.multiply(columns);
        Array2DRowRealMatrix gain =
                inverse(turned(columns).multiply(weighted).getDataRef()).multiply(turned(weighted));
        Array2DRowRealMatrix rest = inverse.subtract(weighted.multiply(gain));
        return new Projection(gain.getDataRef(), rest.getDataRef());
    }

    /** By this type a product runs along rows; by the interface it asks for each cell and takes twice as long. */
    private static Array2DRowRealMatrix turned(Array2DRowRealMatrix matrix) {
        return new Array2DRowRealMatrix(matrix.transpose().getData(), false);
    }

    /** Inverse of a symmetric positive definite matrix, of which only the upper triangle is read. */
    static Array2DRowRealMatrix inverse(double[][] matrix) {
        int size = matrix.length;
        SymmetricFactor factor = new SymmetricFactor(size);
        for (int row = 0; row < size; row++) {
            System.arraycopy(matrix[row], row, factor.rows(), row * size + row, size - row);
        }
        if (!factor.factor()) {
            throw new IllegalArgumentException("a covariance that is not positive definite");
        }
        double[] cells = factor.inverseFrom(0);
        double[][] inverse = new double[size][];
        for (int row = 0; row < size; row++) {
            inverse[row] = Arrays.copyOfRange(cells, row * size, (row + 1) * size);
        }
        return new Array2DRowRealMatrix(inverse, false);
    }

    Series coefficients(Series readings) {
        return Series.generate(gain.length, row -> sum(gain[row], readings));
    }

    /** What each reading adds to a weighted sum of the coefficients. */
    Series influence(Series contrast) {
        return Series.generate(rest.length, reading -> {
            double sum = 0;
            for (int coefficient = 0; coefficient < gain.length; coefficient++) {
                sum += contrast.get(coefficient) * gain[coefficient][reading];
            }
            return sum;
        });
    }

    /** P times the readings. */
    Series rest(Series readings) {
        return Series.generate(rest.length, row -> sum(rest[row], readings));
    }

    /** A diagonal element of P: one over the variance of a reading as the others and the design foretell it. */
    double rest(int reading) {
        return rest[reading][reading];
    }

    /** Any element of P. */
    double rest(int row, int column) {
        return rest[row][column];
    }

    private static double sum(double[] factors, Series readings) {
        double sum = 0;
        for (int index = 0; index < factors.length; index++) {
            sum += factors[index] * readings.get(index);
        }
        return sum;
    }
}
