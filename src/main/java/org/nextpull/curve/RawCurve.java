package org.nextpull.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.nextpull.math.Series;
import org.nextpull.math.WindowQuadratic;
import org.nextpull.unit.Power;
import org.nextpull.unit.SpeedBand;
import org.nextpull.unit.Torque;

/**
 * Torque and power over speed as measured, before any correction for the air. It has only the points that the pull covers. A day keeps one
 * for each of its pulls, so it holds bare numbers, and makes its points when they are asked for.
 *
 * @param grid the grid that its points lie on; a hold has one point at the speed that was held
 * @param axes what it shows
 * @param stretches its points, of rising speed, at least one
 * @param noise how sure they are
 */
public record RawCurve(SpeedGrid grid, CurveAxes axes, List<Stretch> stretches, CurveNoise noise) {
    private static final double EDGE_RPM = 1e-3;
    private static final double HALF_WINDOW_RPM = 200;
    private static final int LEAST_TO_SMOOTH = 5;

    public RawCurve {
        stretches = List.copyOf(stretches);
    }

    /**
     * Points without a hole.
     *
     * @param fromRpm speed of the first, rpm; each further one lies a step of the grid above
     * @param torque torque of each, N.m
     */
    record Stretch(double fromRpm, Series torque) {}

    /**
     * Of points in the order given, which must be that of rising speed.
     *
     * @throws IllegalArgumentException without a point
     */
    static RawCurve of(SpeedGrid grid, CurveAxes axes, List<CurvePoint> points, CurveNoise noise) {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a curve has a point");
        }
        List<Stretch> stretches = new ArrayList<>();
        int first = 0;
        for (int end = 1; end <= points.size(); end++) {
            double next = points.get(first).rpm() + (end - first) * grid.stepRpm();
            if (end == points.size() || points.get(end).rpm() != next) {
                List<CurvePoint> own = points.subList(first, end);
                stretches.add(new Stretch(own.get(0).rpm(), torque(own)));
                first = end;
            }
        }
        return new RawCurve(grid, axes, stretches, noise);
    }

    private static Series torque(List<CurvePoint> points) {
        return Series.generate(
                points.size(), index -> points.get(index).torque().newtonMetres());
    }

    /** Its points. */
    public List<CurvePoint> points() {
        List<CurvePoint> points = new ArrayList<>();
        for (Stretch stretch : stretches) {
            for (int index = 0; index < stretch.torque().size(); index++) {
                points.add(axes.point(
                        stretch.fromRpm() + index * grid.stepRpm(),
                        Torque.ofNewtonMetres(stretch.torque().get(index))));
            }
        }
        return points;
    }

    /** The same to be drawn and read: what tells how sure its means are fills several times the memory of its points. */
    RawCurve withoutNoise() {
        return new RawCurve(grid, axes, stretches, CurveNoise.LEFT_OUT);
    }

    /**
     * The mean over a band; empty where the curve has no point in it.
     *
     * @throws IllegalStateException when the noise of the curve was left out
     */
    public Optional<BandMean> bandMean(SpeedBand band) {
        List<CurvePoint> points = points();
        int first = 0;
        while (first < points.size() && points.get(first).rpm() < band.fromRpm() - EDGE_RPM) {
            first++;
        }
        int end = first;
        while (end < points.size() && points.get(end).rpm() <= band.toRpm() + EDGE_RPM) {
            end++;
        }
        return end == first ? Optional.empty() : Optional.of(mean(band, points, first, end));
    }

    private BandMean mean(SpeedBand band, List<CurvePoint> points, int first, int end) {
        List<CurvePoint> inBand = points.subList(first, end);
        double count = inBand.size();
        double torque = inBand.stream()
                        .mapToDouble(point -> point.torque().newtonMetres())
                        .sum()
                / count;
        double power =
                inBand.stream().mapToDouble(point -> point.power().watts()).sum() / count;
        double wattsPerNewtonMetre = Math.PI / 30 * axes.shaftRevPerSpeedRev();
        Series torqueWeights = Series.constant(inBand.size(), 1 / count);
        Series powerWeights =
                Series.generate(inBand.size(), index -> inBand.get(index).rpm() * wattsPerNewtonMetre / count);
        int wanted = points.size() == 1 ? 1 : grid.pointsIn(band).length;
        return new BandMean(
                band,
                Torque.ofNewtonMetres(torque),
                Power.ofWatts(power),
                Torque.ofNewtonMetres(noise.errorOfSum(first, torqueWeights)),
                Power.ofWatts(noise.errorOfSum(first, powerWeights)),
                Math.min(1, count / Math.max(1, wanted)));
    }

    /** The point of most torque, after a local quadratic has taken the noise of single points away. */
    public CurvePoint peakTorque() {
        return highest(point -> point.torque().newtonMetres());
    }

    /** The point of most power, likewise. */
    public CurvePoint peakPower() {
        return highest(point -> point.power().watts());
    }

    private CurvePoint highest(ToDoubleFunction<CurvePoint> figure) {
        List<CurvePoint> smoothed = smoothed();
        CurvePoint best = smoothed.get(0);
        for (CurvePoint point : smoothed) {
            if (figure.applyAsDouble(point) > figure.applyAsDouble(best)) {
                best = point;
            }
        }
        return best;
    }

    private List<CurvePoint> smoothed() {
        List<CurvePoint> points = points();
        if (points.size() < LEAST_TO_SMOOTH) {
            return points;
        }
        Series rpm = Series.of(points.stream().mapToDouble(CurvePoint::rpm));
        WindowQuadratic fit = new WindowQuadratic(rpm, torque(points));
        return points.stream()
                .map(point -> axes.point(
                        point.rpm(),
                        Torque.ofNewtonMetres(fit.at(point.rpm(), HALF_WINDOW_RPM, LEAST_TO_SMOOTH)
                                .value())))
                .toList();
    }

    /**
     * The points at the multiples of a distance, read between neighbours where the grid has none there. A curve of one point gives that
     * one.
     *
     * @param everyRpm distance in rpm, from 1
     * @throws IllegalArgumentException for a distance of 0 or less, where the curve has more than one point
     */
    public List<CurvePoint> rowsEvery(int everyRpm) {
        List<CurvePoint> points = points();
        double low = points.get(0).rpm();
        double high = points.get(points.size() - 1).rpm();
        if (!(low < high)) {
            return points;
        }
        double tolerance = 1.5 * grid.stepRpm();
        List<CurvePoint> rows = new ArrayList<>();
        int above = 0;
        for (double rpm : new SpeedGrid(everyRpm).pointsIn(new SpeedBand(Math.max(0, low), high))) {
            while (points.get(above).rpm() < rpm && above < points.size() - 1) {
                above++;
            }
            CurvePoint upper = points.get(above);
            CurvePoint lower = above == 0 || upper.rpm() == rpm ? upper : points.get(above - 1);
            if (upper.rpm() - lower.rpm() <= tolerance) {
                rows.add(between(lower, upper, rpm));
            }
        }
        return List.copyOf(rows);
    }

    private CurvePoint between(CurvePoint lower, CurvePoint upper, double rpm) {
        if (lower.rpm() == upper.rpm()) {
            return upper;
        }
        double share = (rpm - lower.rpm()) / (upper.rpm() - lower.rpm());
        double torque =
                lower.torque().newtonMetres() * (1 - share) + upper.torque().newtonMetres() * share;
        return axes.point(rpm, Torque.ofNewtonMetres(torque));
    }

    /**
     * The mean of a curve over a band: the plain mean of its grid points there.
     *
     * @param band the band
     * @param torque mean torque
     * @param power mean power
     * @param torqueError standard error of the mean torque from the noise within the pull; says nothing of the scatter from pull to pull
     * @param powerError the same for the power
     * @param coverage share of the band's grid points that the curve has, dimensionless, above 0 and at most 1
     */
    public record BandMean(
            SpeedBand band, Torque torque, Power power, Torque torqueError, Power powerError, double coverage) {
        /** Whether the curve has every point of the band. */
        public boolean isComplete() {
            return coverage >= 1;
        }

        BandMean times(double factor) {
            return new BandMean(
                    band,
                    Torque.ofNewtonMetres(torque.newtonMetres() * factor),
                    Power.ofWatts(power.watts() * factor),
                    Torque.ofNewtonMetres(torqueError.newtonMetres() * factor),
                    Power.ofWatts(powerError.watts() * factor),
                    coverage);
        }
    }
}
