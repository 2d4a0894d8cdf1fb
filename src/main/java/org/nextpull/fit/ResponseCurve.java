package org.nextpull.fit;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.nextpull.math.NormalMixture;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * The figure of a pull against one number of spark, or against lambda: through what the pulls read, as the posterior bends it. Each node
 * has a curve and a level of its own.
 */
public final class ResponseCurve {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;
    private static final double PERCENT = 100;
    /** Step of the slope over a peak that is not known, degrees or hundredths of lambda. */
    private static final double SLOPE_STEP = 0.05;

    private final SurfacePosterior posterior;
    private final double[] lnFigures;
    /** Lambda of each reading of each pull, hundredths from the guess. */
    private final double[][] hundredths;

    private final IdentityHashMap<SolvedCell, double[]> levelsOfSpark;
    private final IdentityHashMap<SolvedCell, double[]> levelsOfMixture;

    /**
     * @param figures what is fitted of each pull of the surface, in its order; any unit, positive
     * @throws IllegalArgumentException where they are not as many as the pulls
     */
    public ResponseCurve(SurfacePosterior posterior, double[] figures) {
        if (figures.length != posterior.surface().pulls().size()) {
            throw new IllegalArgumentException(figures.length + " figures of other pulls");
        }
        this.posterior = posterior;
        lnFigures = new double[figures.length];
        for (int i = 0; i < figures.length; i++) {
            lnFigures[i] = PERCENT * Math.log(figures[i]);
        }
        hundredths = posterior.surface().pulls().stream()
                .map(pull -> pull.readings().stream()
                        .mapToDouble(reading ->
                                reading.lambda().map(posterior::hundredths).orElse(0.0))
                        .toArray())
                .toArray(double[][]::new);
        levelsOfSpark = levels(false);
        levelsOfMixture = levels(true);
    }

    /** The figure at a setting, in the unit of the pulls. */
    public record At(double median, Span interval) {}

    /** Along one number of spark everywhere, degrees, at a mixture. */
    public DoubleFunction<At> alongDeg(Optional<Lambda> lambda) {
        double z = lambda.map(posterior::hundredths).orElse(0.0);
        IdentityHashMap<SolvedCell, Double> best = new IdentityHashMap<>();
        for (SolvedCell cell : posterior.cells) {
            best.put(cell, FlatNumber.of(posterior.columns(), cell, z).variance());
        }
        return deg -> at(new Place(deg, z, false), best);
    }

    /** Along lambda, with the spark at its best for that. */
    public DoubleFunction<At> alongLambda() {
        IdentityHashMap<SolvedCell, Double> best = new IdentityHashMap<>();
        for (SolvedCell cell : posterior.cells) {
            best.put(
                    cell,
                    posterior
                            .columns()
                            .mixture
                            .map(first -> cell.commons(first + 1, first + 1))
                            .orElse(0.0));
        }
        return lambda -> at(new Place(0, posterior.hundredths(Lambda.of(lambda)), true), best);
    }

    /** Where the curve is asked for. */
    private record Place(double deg, double hundredths, boolean followsSpark) {}

    /** At a place, with the variance of the best in each node. */
    private At at(Place place, IdentityHashMap<SolvedCell, Double> best) {
        NormalMixture ln = posterior.mixture(
                cell -> ln(cell, place, 0),
                cell -> Math.sqrt(variance(cell, place, Objects.requireNonNull(best.get(cell)))));
        return new At(
                figure(ln.quantile(1 - (LOW + HIGH) / 2)),
                Span.of(figure(ln.quantile(LOW)), figure(ln.quantile(HIGH))));
    }

    private static double figure(double lnPercent) {
        return Math.exp(lnPercent / PERCENT);
    }

    /** In a node whose best lies off by a number of steps: -1, 0 or 1. */
    private double ln(SolvedCell cell, Place place, int steps) {
        IdentityHashMap<SolvedCell, double[]> levels = place.followsSpark ? levelsOfMixture : levelsOfSpark;
        return Objects.requireNonNull(levels.get(cell))[steps + 1] - lossAt(cell, place, steps * SLOPE_STEP);
    }

    private IdentityHashMap<SolvedCell, double[]> levels(boolean followsSpark) {
        IdentityHashMap<SolvedCell, double[]> levels = new IdentityHashMap<>();
        Place any = new Place(0, 0, followsSpark);
        for (SolvedCell cell : posterior.cells) {
            levels.put(
                    cell,
                    new double[] {level(cell, any, -SLOPE_STEP), level(cell, any, 0), level(cell, any, SLOPE_STEP)});
        }
        return levels;
    }

    /** Level of a node by all pulls, at the middle of the day. */
    private double level(SolvedCell cell, Place place, double off) {
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < lnFigures.length; i++) {
            double w = cell.levelWeight[i];
            sum += w * (lnFigures[i] + lossOf(cell, i, place, off));
            weight += w;
        }
        return sum / weight;
    }

    /** What a pull lost in a node whose best lies some way off. */
    private double lossOf(SolvedCell cell, int pull, Place place, double off) {
        List<SurfacePull.Reading> readings =
                posterior.surface().pulls().get(pull).readings();
        double sum = 0;
        for (int k = 0; k < readings.size(); k++) {
            SurfacePull.Reading reading = readings.get(k);
            double z = hundredths[pull][k];
            double x = reading.advance().deg()
                    - SparkMixture.peak(posterior.columns(), cell, reading.row(), z)
                    - (place.followsSpark ? 0 : off);
            sum += cell.fall(reading.row(), x) + mixture(cell, z - (place.followsSpark ? off : 0));
        }
        return sum / readings.size();
    }

    private double lossAt(SolvedCell cell, Place place, double off) {
        if (place.followsSpark) {
            return mixture(cell, place.hundredths - off);
        }
        double sum = 0;
        for (int r = 0; r < cell.peak.length; r++) {
            double peak = SparkMixture.peak(posterior.columns(), cell, r, place.hundredths);
            sum += cell.fall(r, place.deg - peak - off);
        }
        return sum / cell.peak.length + mixture(cell, place.hundredths);
    }

    private double mixture(SolvedCell cell, double hundredths) {
        if (posterior.columns().mixture.isEmpty()) {
            return 0;
        }
        int first = posterior.columns().mixture.get();
        double w = hundredths - cell.common[first + 1];
        double share = Math.max(SurfaceTangent.LEAST_SHARE, 1 - cell.common[first + 3] * w * SurfaceTangent.PER_TEN);
        return Math.exp(cell.common[first + 2]) * w * w * share;
    }

    private double variance(SolvedCell cell, Place place, double best) {
        double slope = (ln(cell, place, 1) - ln(cell, place, -1)) / (2 * SLOPE_STEP);
        double scatter = cell.node.scatter();
        return slope * slope * best + scatter * scatter / lnFigures.length;
    }
}
