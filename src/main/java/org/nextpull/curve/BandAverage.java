package org.nextpull.curve;

import java.util.List;
import java.util.Optional;
import org.nextpull.math.Series;
import org.nextpull.unit.Power;
import org.nextpull.unit.SpeedBand;
import org.nextpull.unit.Torque;

/** The plain mean of a curve's points in a band. */
final class BandAverage {
    private static final double EDGE_RPM = 1e-3;

    private BandAverage() {}

    static Optional<BandMean> of(RawCurve curve, SpeedBand band) {
        List<CurvePoint> points = curve.points();
        int first = 0;
        while (first < points.size() && points.get(first).rpm() < band.fromRpm() - EDGE_RPM) {
            first++;
        }
        int end = first;
        while (end < points.size() && points.get(end).rpm() <= band.toRpm() + EDGE_RPM) {
            end++;
        }
        return end == first ? Optional.empty() : Optional.of(mean(curve, band, first, end));
    }

    private static BandMean mean(RawCurve curve, SpeedBand band, int first, int end) {
        List<CurvePoint> points = curve.points().subList(first, end);
        double count = points.size();
        double torque = points.stream()
                        .mapToDouble(point -> point.torque().newtonMetres())
                        .sum()
                / count;
        double power =
                points.stream().mapToDouble(point -> point.power().watts()).sum() / count;
        double wattsPerNewtonMetre = Math.PI / 30 * curve.axes().shaftRevPerSpeedRev();
        Series torqueWeights = Series.constant(points.size(), 1 / count);
        Series powerWeights =
                Series.generate(points.size(), index -> points.get(index).rpm() * wattsPerNewtonMetre / count);
        int wanted = curve.points().size() == 1 ? 1 : curve.grid().pointsIn(band).length;
        return new BandMean(
                band,
                Torque.ofNewtonMetres(torque),
                Power.ofWatts(power),
                Torque.ofNewtonMetres(curve.noise().errorOfSum(first, torqueWeights)),
                Power.ofWatts(curve.noise().errorOfSum(first, powerWeights)),
                Math.min(1, count / Math.max(1, wanted)));
    }
}
