package org.nextpull.fit;

import org.nextpull.math.SymmetricFactor;

/** What one node of the grid says of the surface, and how much it counts. Arrays are its own and are not written again. */
final class SolvedCell {
    final SurfaceGrid.Node node;
    final double weight;
    final double[] peak;
    final double[] common;
    final double[] levelWeight;
    final double[] curvature;
    final double[] asymmetry;
    private final int commonCount;
    private final int rowCount;
    /** Covariance of common columns and best advances, square. */
    private final double[] covariance;

    private final double[] factor;

    private SolvedCell(Solution solution, double weight, double[] covariance) {
        node = solution.node;
        this.weight = weight;
        peak = solution.peak;
        common = solution.common;
        levelWeight = solution.levelWeight;
        curvature = solution.curvature;
        asymmetry = solution.asymmetry;
        commonCount = solution.common.length;
        rowCount = solution.peak.length;
        factor = solution.factor;
        this.covariance = covariance;
    }

    /** Percent that a row loses some degrees from its best, bent as {@link SurfaceTangent} has it. */
    double fall(int row, double offDeg) {
        double near = Math.max(-SurfaceTangent.FARTHEST_DEG, Math.min(SurfaceTangent.FARTHEST_DEG, offDeg));
        double share = Math.max(SurfaceTangent.LEAST_SHARE, 1 - asymmetry[row] * near * SurfaceTangent.PER_TEN);
        return curvature[row] * offDeg * offDeg * share;
    }

    /** The equations that the node came from, upper triangle in a square. */
    double[] equations() {
        int size = 2 * rowCount + commonCount;
        double[] equations = new double[size * size];
        for (int k = 0; k < size; k++) {
            for (int i = k; i < size; i++) {
                double share = factor[k * size + i];
                for (int j = i; j < size; j++) {
                    equations[i * size + j] += share * factor[k * size + j];
                }
            }
        }
        return equations;
    }

    /** Covariance of two best advances, degrees squared. */
    double peaks(int row, int otherRow) {
        int width = commonCount + rowCount;
        return covariance[(commonCount + row) * width + commonCount + otherRow];
    }

    /** Covariance of a common column and a best advance. */
    double commonAndPeak(int column, int row) {
        return covariance[column * (commonCount + rowCount) + commonCount + row];
    }

    /** Variance of a sum over common columns and then best advances. */
    double variance(double[] shares) {
        double variance = 0;
        for (int i = 0; i < shares.length; i++) {
            for (int j = 0; j < shares.length; j++) {
                variance += shares[i] * shares[j] * covariance[i * shares.length + j];
            }
        }
        return variance;
    }

    /** Covariance of two common columns. */
    double commons(int column, int otherColumn) {
        return covariance[column * (commonCount + rowCount) + otherColumn];
    }

    /** A node solved, before it is known what it counts. */
    static final class Solution {
        private final SurfaceGrid.Node node;
        private final double logWeight;
        private final double[] peak;
        private final double[] common;
        private final double[] levelWeight;
        private final double[] curvature;
        private final double[] asymmetry;
        private final double[] factor;

        /** The arrays are handed over. */
        Solution(
                SurfaceGrid.Node node,
                double logWeight,
                double[] peak,
                double[] common,
                double[] levelWeight,
                double[] curvature,
                double[] asymmetry,
                double[] factor) {
            this.node = node;
            this.logWeight = logWeight;
            this.peak = peak;
            this.common = common;
            this.levelWeight = levelWeight;
            this.curvature = curvature;
            this.asymmetry = asymmetry;
            this.factor = factor;
        }

        SurfaceGrid.Node node() {
            return node;
        }

        double logWeight() {
            return logWeight;
        }

        SolvedCell weighted(double weight) {
            int size = 2 * peak.length + common.length;
            SymmetricFactor own = new SymmetricFactor(size);
            System.arraycopy(factor, 0, own.rows(), 0, factor.length);
            return new SolvedCell(this, weight, own.inverseFrom(peak.length));
        }
    }
}
