package org.nextpull.curve;

import org.nextpull.math.Series;

/**
 * Noise of single rows about a smooth curve. Neighbouring rows of a log are rarely independent: filters of the instruments and the
 * engine's own swing carry over. The variance is therefore multiplied by the integrated autocorrelation time, 1 + 2 sum(rho), with the
 * sum cut off at the first pair of lags that is not positive (initial positive sequence: Geyer, Statistical Science 7, 1992, 473-483).
 */
final class RowNoise {
    private static final int LONGEST_LAG = 2000;

    private RowNoise() {}

    /**
     * Variance that independent rows would need to give a mean the same error.
     *
     * @param residual what is left of the rows, in order of time
     * @param fitted parameters that the smooth curve took from them
     */
    static double effectiveVariance(Series residual, double fitted) {
        int rows = residual.size();
        if (rows < 3) {
            return 0;
        }
        double[] r = residual.toArray();
        double zero = covariance(r, 0);
        if (zero == 0) {
            return 0;
        }
        double time = 1;
        int most = Math.min(LONGEST_LAG, rows / 4);
        for (int lag = 1; lag < most; lag += 2) {
            double pair = (covariance(r, lag) + covariance(r, lag + 1)) / zero;
            if (pair <= 0) {
                break;
            }
            time += 2 * pair;
        }
        return zero * time * rows / Math.max(1, rows - fitted);
    }

    private static double covariance(double[] r, int lag) {
        double sum = 0;
        for (int row = lag; row < r.length; row++) {
            sum += r[row] * r[row - lag];
        }
        return sum / r.length;
    }
}
