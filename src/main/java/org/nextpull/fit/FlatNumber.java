package org.nextpull.fit;

/**
 * The best single number over all rows in one node: where the rows' slopes cancel.
 *
 * @param deg advance
 * @param variance of it
 * @param curvature percent of the band lost per degree squared away from it
 */
record FlatNumber(double deg, double variance, double curvature) {
    private static final int NEWTON_STEPS = 3;
    /** Three times the asymmetry a degree: from {@code d/dx x^2 (1 - g x/10)}. */
    private static final double SLOPE_BEND = 0.3;

    private static final double LEAST_SHARE = 0.2;

    static FlatNumber of(CommonColumns columns, SolvedCell cell, double hundredths) {
        int rows = cell.peak.length;
        double[] peak = new double[rows];
        double deg = 0;
        double sum = 0;
        for (int r = 0; r < rows; r++) {
            peak[r] = SparkMixture.peak(columns, cell, r, hundredths);
            deg += cell.curvature[r] * peak[r];
            sum += cell.curvature[r];
        }
        deg /= sum;
        for (int step = 0; step < NEWTON_STEPS; step++) {
            double slope = 0;
            double bend = 0;
            for (int r = 0; r < rows; r++) {
                double x = deg - peak[r];
                double g = cell.asymmetry[r];
                slope += cell.curvature[r] * x * (2 - SLOPE_BEND * g * x);
                bend += cell.curvature[r] * 2 * Math.max(LEAST_SHARE, 1 - SLOPE_BEND * g * x);
            }
            deg -= slope / bend;
        }
        double[] share = new double[rows];
        double total = 0;
        for (int r = 0; r < rows; r++) {
            share[r] = cell.curvature[r] * Math.max(LEAST_SHARE, 1 - SLOPE_BEND * cell.asymmetry[r] * (deg - peak[r]));
            total += share[r];
        }
        double variance = 0;
        for (int r = 0; r < rows; r++) {
            for (int s = 0; s < rows; s++) {
                variance += share[r]
                        * share[s]
                        / (total * total)
                        * SparkMixture.covariance(columns, cell, r, s, hundredths);
            }
        }
        return new FlatNumber(deg, variance, total / rows);
    }
}
