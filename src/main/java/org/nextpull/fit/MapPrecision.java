package org.nextpull.fit;

import org.nextpull.math.SymmetricFactor;

/** Inverse of the prior covariance of the best-torque map. */
final class MapPrecision {
    private final int size;
    private final double[] inverse;
    private final double halfLogDeterminant;

    MapPrecision(double[] covariance, int size) {
        this.size = size;
        SymmetricFactor factor = new SymmetricFactor(size);
        System.arraycopy(covariance, 0, factor.rows(), 0, covariance.length);
        if (!factor.factor()) {
            throw new IllegalArgumentException("the prior covariance of the map is not positive definite");
        }
        inverse = factor.inverseFrom(0);
        halfLogDeterminant = factor.halfLogDeterminant();
    }

    double at(int row, int otherRow) {
        return inverse[row * size + otherRow];
    }

    double halfLogDeterminant() {
        return halfLogDeterminant;
    }
}
