package org.nextpull.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.nextpull.math.Series;
import org.nextpull.math.WindowQuadratic;
import org.nextpull.unit.SpeedBand;
import org.nextpull.unit.Torque;

/**
 * The curve of a sweep: at each grid point the mean of the rows under a triangle that reaches to the neighbouring points, or further
 * where the rows are further apart. The rows under it seldom lie evenly about its point, so each is first moved to it along the local
 * slope of a wider fit; then neither the rate of sampling nor that of the sweep shifts the mean.
 */
final class SweepCurve {
    /** Half the window of the wider fit, in reaches of the triangle. */
    private static final double WIDE_REACHES = 8;

    private static final int LEAST_WIDE_ROWS = 7;

    /** Half the window of the fit that noise is told from, as a share of the sweep, and the places at which it is read. */
    private static final double NOISE_SHARE = 0.2;

    private static final int NOISE_PLACES = 60;

    /** A point needs a row that weighs at least this much, where 1 is a row right on it. */
    private static final double LEAST_WEIGHT = 0.1;

    /** Holes up to this wide are bridged from the rows beside them; a wider one leaves its points out. */
    private static final double BRIDGE_RPM = 150;

    private static final double BRIDGE_REACHES = 3;

    private final ShaftReader.Rows rows;
    private final SpeedGrid grid;
    private final double reach;
    private final Integer[] order;
    private final Series rpm;
    private final Series torque;
    private final WindowQuadratic wide;

    /**
     * Gets the rows ready.
     *
     * @param reach how far the triangle reaches to each side, rpm
     */
    SweepCurve(ShaftReader.Rows rows, double reach) {
        this.rows = rows;
        this.grid = SpeedGrid.STANDARD;
        this.reach = reach;
        this.order = IntStream.range(0, rows.size()).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(row -> rows.rpm().get(row)));
        this.rpm = Series.generate(order.length, index -> rows.rpm().get(order[index]));
        this.torque = Series.generate(order.length, index -> rows.torque().get(order[index]));
        this.wide = new WindowQuadratic(rpm, torque);
    }

    private List<CurvePoint> points(List<CurveNoise.Weights> weights) {
        List<CurvePoint> points = new ArrayList<>();
        int first = 0;
        for (double place : grid.pointsIn(new SpeedBand(Math.max(0, rpm.first() - reach), rpm.last() + reach))) {
            while (first < rpm.size() && rpm.get(first) <= place - reach) {
                first++;
            }
            int end = first;
            while (end < rpm.size() && rpm.get(end) < place + reach) {
                end++;
            }
            Optional<CurveNoise.Weights> rowsOfPoint =
                    triangle(place, first, end).or(() -> bridge(place));
            if (rowsOfPoint.isPresent()) {
                CurveNoise.Weights own = rowsOfPoint.get();
                points.add(rows.axes().point(place, Torque.ofNewtonMetres(mean(place, own))));
                weights.add(own);
            }
        }
        return points;
    }

    /** The curve; empty where no row lies near a point of the grid. */
    Optional<RawCurve> curve() {
        List<CurveNoise.Weights> weights = new ArrayList<>();
        List<CurvePoint> points = points(weights);
        if (points.isEmpty()) {
            return Optional.empty();
        }
        CurveNoise noise = new CurveNoise(weights, Series.constant(rpm.size(), rowVariance()));
        return Optional.of(RawCurve.of(grid, rows.axes(), points, noise));
    }

    private Optional<CurveNoise.Weights> triangle(double place, int first, int end) {
        Series heights = Series.generate(end - first, index -> 1 - Math.abs(rpm.get(first + index) - place) / reach);
        return heights.isEmpty() || heights.max() < LEAST_WEIGHT
                ? Optional.empty()
                : Optional.of(new CurveNoise.Weights(first, heights.times(1 / heights.sum())));
    }

    /** The rows on both sides of a small hole. */
    private Optional<CurveNoise.Weights> bridge(double place) {
        int above = 0;
        while (above < rpm.size() && rpm.get(above) < place) {
            above++;
        }
        if (above == 0 || above == rpm.size()) {
            return Optional.empty();
        }
        double width = rpm.get(above) - rpm.get(above - 1);
        if (!(width > 0) || width > Math.max(BRIDGE_RPM, BRIDGE_REACHES * reach)) {
            return Optional.empty();
        }
        double share = (place - rpm.get(above - 1)) / width;
        return Optional.of(new CurveNoise.Weights(above - 1, Series.of(1 - share, share)));
    }

    private double mean(double place, CurveNoise.Weights own) {
        double slope = wideAt(place).slope();
        double sum = 0;
        for (int index = 0; index < own.count(); index++) {
            int row = own.first() + index;
            sum += own.each().get(index) * (torque.get(row) + slope * (place - rpm.get(row)));
        }
        return sum;
    }

    private WindowQuadratic.Local wideAt(double place) {
        return wide.at(place, WIDE_REACHES * reach, LEAST_WIDE_ROWS);
    }

    /** Noise of the rows about a very wide fit: a narrow one would follow slow noise and hide it. */
    private double rowVariance() {
        double span = rpm.last() - rpm.first();
        double half = Math.max(WIDE_REACHES * reach, span * NOISE_SHARE);
        double[] level = new double[NOISE_PLACES + 1];
        for (int place = 0; place <= NOISE_PLACES; place++) {
            level[place] = wide.at(rpm.first() + span * place / NOISE_PLACES, half, LEAST_WIDE_ROWS)
                    .value();
        }
        double[] residual = new double[rpm.size()];
        for (int index = 0; index < order.length; index++) {
            double place = span > 0 ? (rpm.get(index) - rpm.first()) / span * NOISE_PLACES : 0;
            int below = Math.min(NOISE_PLACES - 1, (int) place);
            double share = place - below;
            residual[order[index]] = torque.get(index) - level[below] * (1 - share) - level[below + 1] * share;
        }
        return CurveNoise.effectiveVariance(Series.of(residual), 3 * Math.max(1, span / (2 * half)));
    }
}
