package org.nextpull.fit;

import java.util.Arrays;
import org.nextpull.math.Normal;
import org.nextpull.math.NormalMixture;

/** The best single number over all rows. */
final class FlatAim implements SurfaceAim {
    private static final double NO_SPREAD = 1e-9;

    private final SurfacePosterior posterior;
    private final double cap;
    private final double hundredths;

    FlatAim(SurfacePosterior posterior, double hundredths, double cap) {
        this.posterior = posterior;
        this.hundredths = hundredths;
        this.cap = cap;
    }

    private FlatNumber number(SolvedCell cell) {
        return FlatNumber.of(posterior.columns(), cell, hundredths);
    }

    /** The best number, as the pulls have it. */
    NormalMixture best() {
        return posterior.mixture(
                cell -> number(cell).deg(), cell -> Math.sqrt(number(cell).variance()));
    }

    @Override
    public double[] wantedDeg() {
        return everywhere(best().mean());
    }

    private double[] everywhere(double deg) {
        double[] same = new double[posterior.rows().size()];
        Arrays.fill(same, deg);
        return same;
    }

    @Override
    public double[] leastWithin(double nearBestPercent) {
        double curvature = posterior.mean(cell -> number(cell).curvature());
        double best = best().mean();
        double capped = Math.max(0, best - cap);
        return everywhere(best - Math.sqrt(capped * capped + nearBestPercent / curvature));
    }

    @Override
    public TorqueLeft left(double[] deg) {
        double expected = 0;
        double chance = 0;
        for (SolvedCell cell : posterior.cells) {
            FlatNumber number = number(cell);
            double sd = Math.sqrt(Math.max(NO_SPREAD, number.variance()));
            double off = deg[0] - number.deg();
            double lost = off * off + number.variance();
            double highest = Double.POSITIVE_INFINITY;
            if (cap < Double.POSITIVE_INFINITY) {
                double beyond = number.deg() - cap;
                double u = beyond / sd;
                lost -= (beyond * beyond + number.variance()) * Normal.below(u) + beyond * sd * Normal.density(u);
                highest = -u;
            }
            double much = Math.sqrt(TorqueLeft.MUCH_PERCENT / number.curvature());
            // left of the number by more than that, or right of it and not beyond the cap
            double below = Normal.below((off - much) / sd);
            double above = Math.max(0, Normal.below(highest) - Normal.below((off + much) / sd));
            expected += cell.weight * number.curvature() * lost;
            chance += cell.weight * (below + above);
        }
        return new TorqueLeft(expected, chance);
    }
}
