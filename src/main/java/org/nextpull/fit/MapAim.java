package org.nextpull.fit;

/** The best map: each row its own. */
final class MapAim implements SurfaceAim {
    private final SurfacePosterior posterior;
    private final double hundredths;
    private final RowCaps caps;
    private final SurfaceLoss loss;

    MapAim(SurfacePosterior posterior, double hundredths, RowCaps caps) {
        this.posterior = posterior;
        this.hundredths = hundredths;
        this.caps = caps;
        loss = new SurfaceLoss(posterior, hundredths, caps);
    }

    @Override
    public double[] wantedDeg() {
        return new PeakMap(posterior, hundredths).means();
    }

    @Override
    public double[] leastWithin(double nearBestPercent) {
        double[] least = new double[posterior.rows().size()];
        for (int r = 0; r < least.length; r++) {
            int row = r;
            least[r] = posterior.mean(cell -> least(cell, row, nearBestPercent));
        }
        return least;
    }

    private double least(SolvedCell cell, int row, double nearBestPercent) {
        double peak = SparkMixture.peak(posterior.columns(), cell, row, hundredths);
        return peak - NearBest.degBelow(cell, row, Math.max(0, peak - caps.deg(row)), nearBestPercent);
    }

    @Override
    public TorqueLeft left(double[] deg) {
        return loss.of(deg);
    }
}
