package org.nextpull.fit;

import java.util.Optional;

/** The best map: each row its own. */
final class MapAim implements SurfaceAim {
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
            least[r] = Math.min(
                    caps.deg(r),
                    NearBest.least(posterior, new NearBest.Place(r, hundredths), best[r], nearBestPercent));
        }
        return least;
    }

    @Override
    public TorqueLeft left(double[] deg) {
        return loss.of(deg);
    }
}
