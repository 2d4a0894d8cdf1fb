package org.nextpull.fit;

import java.util.Optional;

/** The best map: each row its own. */
final class MapAim implements SurfaceAim {
    private static final int HALVINGS = 30;
    private static final double FARTHEST_DEG = 30;

    private final SurfacePosterior posterior;
    private final double hundredths;
    private final RowCaps caps;
    private final SurfaceLoss loss;

    MapAim(SurfacePosterior posterior, Optional<Double> sought, RowCaps caps) {
        this.posterior = posterior;
        this.hundredths = sought.orElse(0.0);
        this.caps = caps;
        loss = new SurfaceLoss(posterior, sought, caps);
    }

    @Override
    public double[] wantedDeg() {
        return new PeakMap(posterior, hundredths).means();
    }

    @Override
    public double[] leastWithin(double nearBestPercent) {
        double[] least = new double[posterior.rows().size()];
        double[] best = wantedDeg();
        for (int r = 0; r < least.length; r++) {
            least[r] = Math.min(caps.deg(r), leastWithin(nearBestPercent, r, best[r]));
        }
        return least;
    }

    /** The least advance of a row that loses no more on the mean fitted curve than a given share beyond its best. */
    private double leastWithin(double percent, int row, double best) {
        double allowed = fall(row, best) + percent;
        double low = best - FARTHEST_DEG;
        double high = best;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (fall(row, middle) > allowed) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private double fall(int row, double deg) {
        return posterior.mean(
                cell -> cell.fall(row, deg - SparkMixture.peak(posterior.columns(), cell, row, hundredths)));
    }

    @Override
    public TorqueLeft left(double[] deg) {
        return loss.of(deg);
    }
}
