package org.nextpull.fit;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.Objects;
import java.util.Optional;
import org.nextpull.math.Normal;
import org.nextpull.math.NormalMixture;

/** The best single number over all rows. */
final class FlatAim implements SurfaceAim {
    private static final double NO_SPREAD = 1e-9;

    private final SurfacePosterior posterior;
    private final double cap;
    private final Optional<Double> sought;
    private final double hundredths;
    private final IdentityHashMap<SolvedCell, FlatNumber> numbers = new IdentityHashMap<>();

    /**
     * @param sought lambda in hundredths from the guess, whose own distance from the best counts as lost; empty where it is not swept
     */
    FlatAim(SurfacePosterior posterior, Optional<Double> sought, double cap) {
        this.posterior = posterior;
        this.sought = sought;
        hundredths = sought.orElse(0.0);
        this.cap = cap;
        for (SolvedCell cell : posterior.cells) {
            numbers.put(cell, FlatNumber.of(posterior.columns(), cell, hundredths));
        }
    }

    private FlatNumber number(SolvedCell cell) {
        return Objects.requireNonNull(numbers.get(cell));
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
        return everywhere(Math.min(cap, best().mean() - Math.sqrt(nearBestPercent / curvature)));
    }

    @Override
    public TorqueLeft left(double[] deg) {
        double expected = 0;
        double chance = 0;
        for (SolvedCell cell : posterior.cells) {
            Fall spark = new Fall(number(cell), deg[0]);
            Optional<Fall> mixture =
                    sought.flatMap(run -> posterior.columns().mixture).map(first -> new Fall(cell, first));
            expected += cell.weight * (spark.mean() + mixture.map(Fall::mean).orElse(0.0));
            chance += cell.weight * mixture.map(spark::chanceWith).orElseGet(spark::chance);
        }
        return new TorqueLeft(expected, chance);
    }

    /** What is lost beside one peak in one node: a square of a normal distribution, less what nobody may have. */
    private final class Fall {
        private final double curvature;
        private final double off;
        private final double variance;
        private final double cap;

        Fall(FlatNumber number, double deg) {
            curvature = number.curvature();
            off = deg - number.deg();
            variance = Math.max(NO_SPREAD * NO_SPREAD, number.variance());
            cap = FlatAim.this.cap - number.deg();
        }

        Fall(SolvedCell cell, int first) {
            curvature = Math.exp(cell.common[first + 2]);
            off = hundredths - cell.common[first + 1];
            variance = cell.commons(first + 1, first + 1);
            cap = Double.POSITIVE_INFINITY;
        }

        private double sd() {
            return Math.sqrt(variance);
        }

        double mean() {
            double lost = off * off + variance;
            if (cap < Double.POSITIVE_INFINITY) {
                double u = -cap / sd();
                lost -= (cap * cap + variance) * Normal.below(u) - cap * sd() * Normal.density(u);
            }
            return curvature * lost;
        }

        /** That over much is lost: left of the peak by more than that, or right of it and not beyond the cap. */
        double chance() {
            double much = Math.sqrt(TorqueLeft.MUCH_PERCENT / curvature);
            double below = Normal.below((off - much) / sd());
            double above = Math.max(0, Normal.below(cap / sd()) - Normal.below((off + much) / sd()));
            return below + above;
        }

        /** The same of both falls together, by a gamma distribution of their mean and variance. */
        double chanceWith(Fall other) {
            double mean = mean() + other.mean();
            if (mean < NO_SPREAD) {
                return 0;
            }
            double shape = mean * mean / Math.max(spread() + other.spread(), NO_SPREAD * mean * mean);
            double ninth = 1 / (9 * shape);
            return Normal.below(-(Math.cbrt(TorqueLeft.MUCH_PERCENT / mean) - 1 + ninth) / Math.sqrt(ninth));
        }

        private double spread() {
            double free = cap < Double.POSITIVE_INFINITY ? Normal.below(cap / sd()) : 1;
            return curvature * curvature * (2 * free * free * variance * variance + 4 * free * off * off * variance);
        }
    }
}
