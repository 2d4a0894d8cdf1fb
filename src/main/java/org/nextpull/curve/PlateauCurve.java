package org.nextpull.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.nextpull.math.Series;
import org.nextpull.unit.SpeedBand;
import org.nextpull.unit.Torque;

/**
 * The curve of a pull in plateaus: the mean of each plateau, and straight lines between them read at the grid. A single plateau gives a
 * single point at the speed that was held.
 */
record PlateauCurve(CurveAxes axes, SpeedGrid grid, List<Plateau> plateaus) {
    /** How far the lines are carried on beyond the first and last plateau, so that a plateau just beside the band's end still ends it. */
    private static final double BEYOND_RPM = 50;

    /** Mean of one plateau with the variance of its mean torque. */
    record Plateau(Series rpm, Series torque) {
        double meanRpm() {
            return rpm.mean();
        }

        double meanTorque() {
            return torque.mean();
        }

        double variance() {
            double mean = torque.mean();
            return CurveNoise.effectiveVariance(torque.map(value -> value - mean), 1) / torque.size();
        }
    }

    RawCurve curve() {
        List<CurvePoint> points = new ArrayList<>();
        List<CurveNoise.Weights> weights = new ArrayList<>();
        if (plateaus.size() == 1) {
            Plateau only = plateaus.get(0);
            points.add(axes.point(only.meanRpm(), Torque.ofNewtonMetres(only.meanTorque())));
            weights.add(new CurveNoise.Weights(0, Series.of(1)));
        } else {
            lines(points, weights);
        }
        Series variance = Series.of(plateaus.stream().mapToDouble(Plateau::variance));
        return RawCurve.of(grid, axes, points, new CurveNoise(weights, variance));
    }

    private void lines(List<CurvePoint> points, List<CurveNoise.Weights> weights) {
        double low = plateaus.get(0).meanRpm() - BEYOND_RPM;
        double high = plateaus.get(plateaus.size() - 1).meanRpm() + BEYOND_RPM;
        int left = 0;
        for (double place : grid.pointsIn(new SpeedBand(Math.max(0, low), high))) {
            while (left < plateaus.size() - 2 && plateaus.get(left + 1).meanRpm() <= place) {
                left++;
            }
            Plateau below = plateaus.get(left);
            Plateau above = plateaus.get(left + 1);
            double share = (place - below.meanRpm()) / (above.meanRpm() - below.meanRpm());
            double torque = below.meanTorque() * (1 - share) + above.meanTorque() * share;
            points.add(axes.point(place, Torque.ofNewtonMetres(torque)));
            weights.add(new CurveNoise.Weights(left, Series.of(1 - share, share)));
        }
    }

    /** The plateaus of rising, different speeds; those of one speed are joined. */
    static List<Plateau> rising(List<Plateau> plateaus) {
        List<Plateau> sorted = new ArrayList<>(plateaus);
        sorted.sort((left, right) -> Double.compare(left.meanRpm(), right.meanRpm()));
        List<Plateau> joined = new ArrayList<>();
        for (Plateau plateau : sorted) {
            int last = joined.size() - 1;
            if (last >= 0 && plateau.meanRpm() - joined.get(last).meanRpm() < 1) {
                Plateau before = joined.get(last);
                joined.set(
                        last,
                        new Plateau(
                                before.rpm().append(plateau.rpm()),
                                before.torque().append(plateau.torque())));
            } else {
                joined.add(plateau);
            }
        }
        return joined;
    }

    /** The rows of a pull from one time to another. */
    static Plateau between(ShaftReader.Rows rows, double fromS, double toS) {
        int[] inside = IntStream.range(0, rows.size())
                .filter(row -> rows.timeS().get(row) >= fromS && rows.timeS().get(row) <= toS)
                .toArray();
        return new Plateau(rows.rpm().pick(IntStream.of(inside)), rows.torque().pick(IntStream.of(inside)));
    }
}
