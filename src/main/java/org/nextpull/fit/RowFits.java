package org.nextpull.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.nextpull.math.Normal;
import org.nextpull.math.Series;
import org.nextpull.math.smooth.RandomWalkSmoother;

/**
 * The optimum of every row of a timing sweep. The rows of one pull share its drift, its weight and what it was off by as a whole,
 * which the band tells; they take their curvature from the band; and their peaks lie on a smooth line over speed. What is left
 * uncertain in the band's own peak is added to every row.
 */
public final class RowFits {
    private static final int LEAST_POINTS = 3;
    private static final double FULL_WEIGHT = (CellSolver.DOF + 1) / CellSolver.DOF;

    private RowFits() {}

    /**
     * Fits the rows.
     *
     * @param band posterior of the band
     * @param rows evenly spaced, ascending; rows with fewer than three pulls are left out
     */
    public static List<RowFit> of(SweepPosterior band, List<RowSweep> rows) {
        Map<Integer, Common> commons = commons(band);
        List<RowSweep> kept = new ArrayList<>();
        List<RowShapes.RowSums> sums = new ArrayList<>();
        for (RowSweep row : rows) {
            List<SweepPoint> points = row.points().stream()
                    .filter(point -> commons.containsKey(point.pull()))
                    .toList();
            if (points.size() >= LEAST_POINTS) {
                kept.add(new RowSweep(row.rpm(), points));
                sums.add(shapes(band, points, commons).weigh());
            }
        }
        if (kept.isEmpty()) {
            return List.of();
        }
        RandomWalkSmoother.Smoothed smoothed = RandomWalkSmoother.smooth(
                Series.of(sums.stream().mapToDouble(sum -> sum.peak().centre()).toArray()),
                Series.of(sums.stream()
                        .mapToDouble(sum -> sum.peak().sd() * sum.peak().sd())
                        .toArray()));
        List<RowFit> fits = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            double own = smoothed.sds().get(i);
            Belief peak = new Belief(
                    smoothed.values().get(i), Math.hypot(own, band.peak().sd()));
            fits.add(fit(kept.get(i), peak, sums.get(i).leastDistance()));
        }
        return List.copyOf(fits);
    }

    private static RowFit fit(RowSweep row, Belief peak, Belief distance) {
        double low =
                row.points().stream().mapToDouble(SweepPoint::setting).min().orElseThrow();
        double high =
                row.points().stream().mapToDouble(SweepPoint::setting).max().orElseThrow();
        double chance = peak.sd() > 0
                ? Normal.below((high - peak.centre()) / peak.sd()) - Normal.below((low - peak.centre()) / peak.sd())
                : 1;
        Belief least = new Belief(peak.centre() + distance.centre(), Math.hypot(peak.sd(), distance.sd()));
        return new RowFit(row.rpm(), peak, least, chance);
    }

    /** What a pull was off by as a whole, drift included, percent; and its weight, 1 for a pull on the curve. */
    private record Common(double off, double weight) {}

    private static Map<Integer, Common> commons(SweepPosterior band) {
        Map<Integer, Common> commons = new HashMap<>();
        List<SweepPoint> points = band.sweep().points();
        FittedCurve curve = new FittedCurve(band);
        for (int i = 0; i < points.size(); i++) {
            SweepPoint point = points.get(i);
            double fitted = curve.at(point.setting()).median();
            double off = 100 * (point.response() - fitted) / fitted;
            commons.put(point.pull(), new Common(off, Math.min(1, band.weightOf(i) / FULL_WEIGHT)));
        }
        return commons;
    }

    private static RowShapes shapes(SweepPosterior band, List<SweepPoint> points, Map<Integer, Common> commons) {
        int count = points.size();
        double level = points.stream().mapToDouble(SweepPoint::response).max().orElseThrow();
        double[] settings = new double[count];
        double[] readings = new double[count];
        double[] weights = new double[count];
        for (int i = 0; i < count; i++) {
            SweepPoint point = points.get(i);
            Common common = commons.getOrDefault(point.pull(), new Common(0, 1));
            settings[i] = point.setting();
            readings[i] = 100 * point.response() / level - common.off();
            weights[i] = common.weight();
        }
        return new RowShapes(band, settings, readings, weights);
    }
}
