package org.nextpull.fit;

import java.util.Arrays;

/**
 * What one more pull at a setting would teach, before it is made: its reading is not known, so the posterior is averaged over nine
 * equally likely readings. Holds scratch arrays; one thread at a time.
 */
public final class PullValue {
    private static final int NODES = 9;

    /** Standard normal quantiles at (j + 1/2)/9. */
    private static final double[] NORMAL = {
        -1.5932188180,
        -0.9674215661,
        -0.5894557978,
        -0.2822161471,
        0,
        0.2822161471,
        0.5894557978,
        0.9674215661,
        1.5932188180
    };

    /** Below this ratio of signal variance to noise variance the readings are taken as normal. */
    private static final double NOISE_RULES = 2.0 / 3;

    /** A Student-t error with 4 degrees of freedom counts in prediction like a normal one of this many squared scales. */
    private static final double NOISE_SCALES = 1.25;

    private static final long INDEX_MASK = (1 << 16) - 1;

    private final SweepPosterior posterior;
    private final CellTable cells;
    private final double[] mean;
    private final double[] halfPrecision;
    private final double[] density;
    private final double[] reweighted;
    private final long[] keys;
    private final double[] readings = new double[NODES];

    public PullValue(SweepPosterior posterior) {
        this.posterior = posterior;
        cells = posterior.cells();
        mean = new double[cells.count];
        halfPrecision = new double[cells.count];
        density = new double[cells.count];
        reweighted = new double[cells.count];
        keys = new long[cells.count];
    }

    /** Expected drop of the variance of the peak from one more pull at the setting, made as pull number {@code order}. */
    public double varianceDrop(double setting, double order) {
        predict(setting, order);
        double sum = 0;
        double square = 0;
        for (double reading : readings) {
            double total = 0;
            double moment = 0;
            for (int c = 0; c < cells.count; c++) {
                double away = reading - mean[c];
                double weight = FastExp.ofMinus(away * away * halfPrecision[c]) * density[c];
                total += weight;
                moment += weight * cells.peak[c];
            }
            double peak = total > 0 ? moment / total : posterior.peak().centre();
            sum += peak;
            square += peak * peak;
        }
        return Math.max(0, square / NODES - sum / NODES * (sum / NODES));
    }

    /** Decision losses over a ladder, laid out once for many candidates. */
    public LossDrops lossDrops(Ladder ladder) {
        return new LossDrops(new DecisionLosses(posterior).table(ladder));
    }

    /** Expected drop of the decision loss from one more pull. */
    public final class LossDrops {
        private final double[][] losses;
        private final int present;
        private final double[] sums;
        private double presentLoss;
        private double bestLoss;

        private LossDrops(double[][] losses) {
            this.losses = losses;
            sums = new double[losses.length];
            present = leastUnder(cells.weight);
        }

        /** Expected drop of the decision loss of the best ladder setting from one more pull. */
        public double at(double setting, double order) {
            predict(setting, order);
            presentLoss = 0;
            bestLoss = 0;
            for (double reading : readings) {
                double total = 0;
                for (int c = 0; c < cells.count; c++) {
                    double away = reading - mean[c];
                    reweighted[c] = FastExp.ofMinus(away * away * halfPrecision[c]) * density[c];
                    total += reweighted[c];
                }
                if (total > 0) {
                    bestLoss += sums[leastUnder(reweighted)] / total;
                    presentLoss += sums[present] / total;
                }
            }
            return Math.max(0, (presentLoss - bestLoss) / NODES);
        }

        private int leastUnder(double[] weights) {
            int best = 0;
            for (int i = 0; i < losses.length; i++) {
                double sum = 0;
                for (int c = 0; c < cells.count; c++) {
                    sum += weights[c] * losses[i][c];
                }
                sums[i] = sum;
                if (sum < sums[best]) {
                    best = i;
                }
            }
            return best;
        }
    }

    private void predict(double setting, double order) {
        double signalMean = 0;
        double noise = 0;
        for (int c = 0; c < cells.count; c++) {
            double x = setting - cells.peak[c];
            double q = 1 - PeakShape.loss(x, cells.curvature[c], cells.asymmetry[c]);
            mean[c] = cells.level[c] * q + cells.drift[c] * order;
            double variance = q * q * cells.levelVariance[c]
                    + 2 * q * order * cells.covariance[c]
                    + order * order * cells.driftVariance[c]
                    + NOISE_SCALES * cells.noise[c];
            halfPrecision[c] = 0.5 / variance;
            density[c] = cells.weight[c] / Math.sqrt(variance);
            signalMean += cells.weight[c] * mean[c];
            noise += cells.weight[c] * variance;
        }
        double signal = 0;
        for (int c = 0; c < cells.count; c++) {
            signal += cells.weight[c] * (mean[c] - signalMean) * (mean[c] - signalMean);
        }
        setReadings(new Belief(signalMean, Math.sqrt(signal)), noise);
    }

    private void setReadings(Belief signal, double noise) {
        double signalVariance = signal.sd() * signal.sd();
        double stretched = Math.sqrt(signalVariance + noise);
        if (signalVariance <= NOISE_RULES * noise) {
            for (int j = 0; j < NODES; j++) {
                readings[j] = signal.centre() + NORMAL[j] * stretched;
            }
            return;
        }
        signalQuantiles();
        for (int j = 0; j < NODES; j++) {
            readings[j] = signal.centre() + (readings[j] - signal.centre()) * stretched / signal.sd();
        }
    }

    /** Nine equally likely values of the noise-free reading. */
    private void signalQuantiles() {
        double lowest = Double.POSITIVE_INFINITY;
        for (int c = 0; c < cells.count; c++) {
            lowest = Math.min(lowest, mean[c]);
        }
        // bits of a positive double sort as the number does; the last bits give way to the index of the cell
        for (int c = 0; c < cells.count; c++) {
            keys[c] = (Double.doubleToRawLongBits(mean[c] - lowest + 1) & ~INDEX_MASK) | c;
        }
        Arrays.sort(keys);
        int node = 0;
        double cumulated = 0;
        for (long key : keys) {
            int cell = (int) (key & INDEX_MASK);
            cumulated += cells.weight[cell];
            while (node < NODES && cumulated >= (node + 0.5) / NODES) {
                readings[node++] = mean[cell];
            }
        }
    }
}
