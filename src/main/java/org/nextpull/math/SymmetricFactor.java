package org.nextpull.math;

/**
 * Cholesky factor {@code H = U'U} of a symmetric positive definite matrix, in place, without allocation. Only the upper triangle,
 * row by row, is read and written; inner loops run along rows.
 */
public final class SymmetricFactor {
    private final int size;
    private final double[] rows;

    /** Room for a matrix of that size, all zero. */
    public SymmetricFactor(int size) {
        this.size = size;
        rows = new double[size * size];
    }

    /** The matrix to fill, then the factor; entry (i, j), j not below i, at {@code i * size + j}. */
    public double[] rows() {
        return rows;
    }

    /** Factors what stands in the upper triangle; false where it is not positive definite, and then the factor is of no use. */
    public boolean factor() {
        for (int k = 0; k < size; k++) {
            int rowK = k * size;
            double pivot = rows[rowK + k];
            if (!(pivot > 0) || Double.isInfinite(pivot)) {
                return false;
            }
            double inverse = 1 / Math.sqrt(pivot);
            for (int j = k; j < size; j++) {
                rows[rowK + j] *= inverse;
            }
            for (int i = k + 1; i < size; i++) {
                double share = rows[rowK + i];
                if (share != 0) {
                    subtract(i, share, rowK);
                }
            }
        }
        return true;
    }

    private void subtract(int i, double share, int rowK) {
        int rowI = i * size;
        for (int j = i; j < size; j++) {
            rows[rowI + j] -= share * rows[rowK + j];
        }
    }

    /** Solves {@code H x = b} in place of b. */
    public void solve(double[] b) {
        for (int k = 0; k < size; k++) {
            int row = k * size;
            double value = b[k] / rows[row + k];
            b[k] = value;
            for (int j = k + 1; j < size; j++) {
                b[j] -= value * rows[row + j];
            }
        }
        for (int k = size - 1; k >= 0; k--) {
            int row = k * size;
            double sum = b[k];
            for (int j = k + 1; j < size; j++) {
                sum -= rows[row + j] * b[j];
            }
            b[k] = sum / rows[row + k];
        }
    }

    /** Half the natural log of the determinant of H. */
    public double halfLogDeterminant() {
        double sum = 0;
        for (int k = 0; k < size; k++) {
            sum += Math.log(rows[k * size + k]);
        }
        return sum;
    }

    /**
     * The last rows and columns of {@code H^-1}, from {@code first} on: a full square matrix row by row. The covariance of the last
     * unknowns, whatever the first ones are.
     */
    public double[] inverseFrom(int first) {
        int n = size - first;
        double[] upper = new double[n * n];
        for (int column = 0; column < n; column++) {
            for (int i = column; i >= 0; i--) {
                double sum = i == column ? 1 : 0;
                int row = (first + i) * size + first;
                for (int k = i + 1; k <= column; k++) {
                    sum -= rows[row + k] * upper[k * n + column];
                }
                upper[i * n + column] = sum / rows[row + i];
            }
        }
        double[] inverse = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                double sum = 0;
                for (int k = j; k < n; k++) {
                    sum += upper[i * n + k] * upper[j * n + k];
                }
                inverse[i * n + j] = sum;
                inverse[j * n + i] = sum;
            }
        }
        return inverse;
    }
}
