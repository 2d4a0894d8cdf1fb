package org.nextpull.compare;

import java.util.random.RandomGenerator;

/** Noise of the rows of one pull as the residuals show it, drawn in toward rows that know nothing of one another. */
final class RowCorrelation {
    private static final double ROUNDING = 1e-9;

    private RowCorrelation() {}

    /** Lower root of the covariance of the rows; the fewer degrees of freedom, the more it is drawn in. */
    static double[][] root(double[][] residuals, double freedom) {
        int rows = residuals[0].length;
        double keep = freedom / (freedom + 1);
        double[][] root = new double[rows][rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column <= row; column++) {
                double sum = 0;
                for (double[] pull : residuals) {
                    sum += pull[row] * pull[column] / freedom;
                }
                if (row != column) {
                    sum *= keep;
                }
                for (int inner = 0; inner < column; inner++) {
                    sum -= root[row][inner] * root[column][inner];
                }
                if (row == column) {
                    root[row][row] = Math.sqrt(Math.max(ROUNDING * ROUNDING, sum));
                } else {
                    root[row][column] = sum / root[column][column];
                }
            }
        }
        return root;
    }

    static double[] draw(double[][] root, double scale, RandomGenerator random) {
        int rows = root.length;
        double[] normal = new double[rows];
        for (int row = 0; row < rows; row++) {
            normal[row] = scale * random.nextGaussian();
        }
        double[] noise = new double[rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column <= row; column++) {
                noise[row] += root[row][column] * normal[column];
            }
        }
        return noise;
    }
}
