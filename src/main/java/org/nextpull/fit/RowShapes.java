package org.nextpull.fit;

/**
 * One row against the band: what a pull was off by as a whole, the band tells; what remains places the row's peak. Curvature comes
 * from the band, within 0.3 in the log.
 */
final class RowShapes {
    private static final double CURVATURE_SD = 0.3;
    private static final double[] CURVATURE_NODES = {-1.8, -0.9, 0, 0.9, 1.8};
    private static final double STEP = 0.25;
    private static final double REACH = 12;

    /** How far the peak of a row strays from that of the band, before the row is looked at. */
    private static final double STRAY = 5;

    /** Scatter of a row about what the whole pull was off by, percent, with few degrees of freedom. */
    private static final double OWN_SCATTER = 0.2;

    private static final double OWN_DOF = 3;

    private final double[] settings;
    private final double[] readings;
    private final double[] weights;
    private final double bandPeak;
    private final double lnCurvature;
    private final double asymmetry;
    private final double nearBest;

    /** Arrays run in parallel over the pulls; readings are free of drift and of what each pull was off by as a whole. */
    RowShapes(SweepPosterior band, double[] settings, double[] readings, double[] weights) {
        this.settings = settings;
        this.readings = readings;
        this.weights = weights;
        bandPeak = band.peak().centre();
        lnCurvature = band.lnCurvature().centre();
        asymmetry = band.asymmetry().centre();
        nearBest = band.sweep().permitted().nearBest();
    }

    /** Moments of the peak and of the least setting. */
    RowSums weigh() {
        RowSums best = new RowSums();
        for (double peak = bandPeak - REACH; peak <= bandPeak + REACH; peak += STEP) {
            double stray = (peak - bandPeak) / STRAY;
            for (double zk : CURVATURE_NODES) {
                double k = Math.exp(lnCurvature + zk * CURVATURE_SD);
                double prior = -(stray * stray + zk * zk) / 2;
                double least = PeakShape.leastDistance(k, asymmetry, new PeakShape.Fall(1, nearBest));
                best.add(logLikelihood(peak, k, asymmetry) + prior, peak, least);
            }
        }
        return best;
    }

    private double logLikelihood(double peak, double k, double g) {
        double ratioRatio = 0;
        double ratioReading = 0;
        double readingReading = 0;
        double count = 0;
        for (int i = 0; i < settings.length; i++) {
            double q = PeakShape.heldRatio(settings[i] - peak, k, g);
            ratioRatio += weights[i] * q * q;
            ratioReading += weights[i] * q * readings[i];
            readingReading += weights[i] * readings[i] * readings[i];
            count += weights[i];
        }
        double residual = Math.max(0, readingReading - ratioReading * ratioReading / ratioRatio);
        return -(count - 1 + OWN_DOF) / 2 * Math.log(OWN_DOF * OWN_SCATTER * OWN_SCATTER + residual);
    }

    /** Weighted sums that keep their scale as better shapes turn up. */
    static final class RowSums {
        private double highest = Double.NEGATIVE_INFINITY;
        private double total;
        private double peakSum;
        private double peakSquare;
        private double distanceSum;
        private double distanceSquare;

        private void add(double logWeight, double peak, double distance) {
            if (logWeight > highest) {
                double shrink = Math.exp(highest - logWeight);
                total *= shrink;
                peakSum *= shrink;
                peakSquare *= shrink;
                distanceSum *= shrink;
                distanceSquare *= shrink;
                highest = logWeight;
            }
            double weight = Math.exp(logWeight - highest);
            total += weight;
            peakSum += weight * peak;
            peakSquare += weight * peak * peak;
            distanceSum += weight * distance;
            distanceSquare += weight * distance * distance;
        }

        Belief peak() {
            return belief(peakSum / total, peakSquare / total);
        }

        /** Distance of the least setting from the peak; not above 0. */
        Belief leastDistance() {
            return belief(distanceSum / total, distanceSquare / total);
        }

        private static Belief belief(double mean, double square) {
            return new Belief(mean, Math.sqrt(Math.max(0, square - mean * mean)));
        }
    }
}
