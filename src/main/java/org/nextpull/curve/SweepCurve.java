package org.nextpull.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.nextpull.finding.Finding;
import org.nextpull.math.Series;
import org.nextpull.math.WindowQuadratic;
import org.nextpull.unit.SpeedBand;
import org.nextpull.unit.Torque;

/**
 * The curve of a sweep: at each grid point the mean of the rows under a triangle that reaches to the neighbouring points. The rows of
 * a cell seldom lie evenly about its point, so each is first moved to it along the local slope of a wider fit; then neither the rate
 * of sampling nor that of the sweep shifts the mean.
 */
final class SweepCurve {
    /** Half the window of the wider fit, in steps of the grid. */
    private static final double WIDE_STEPS = 8;

    private static final int LEAST_WIDE_ROWS = 7;

    /** A point needs a row that weighs at least this much, where 1 is a row right on it. */
    private static final double LEAST_WEIGHT = 0.25;

    private final ShaftRows rows;
    private final SpeedGrid grid;
    private final Integer[] order;
    private final Series rpm;
    private final Series torque;
    private final WindowQuadratic wide;

    SweepCurve(ShaftRows rows, SpeedGrid grid) {
        this.rows = rows;
        this.grid = grid;
        this.order = IntStream.range(0, rows.size()).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(row -> rows.rpm().get(row)));
        this.rpm = Series.generate(order.length, index -> rows.rpm().get(order[index]));
        this.torque = Series.generate(order.length, index -> rows.torque().get(order[index]));
        this.wide = new WindowQuadratic(rpm, torque);
    }

    private List<CurvePoint> points(List<Integer> firsts, List<double[]> weights) {
        List<CurvePoint> points = new ArrayList<>();
        double step = grid.stepRpm();
        int first = 0;
        for (double place : grid.pointsIn(new SpeedBand(Math.max(0, rpm.first() - step), rpm.last() + step))) {
            while (first < rpm.size() && rpm.get(first) <= place - step) {
                first++;
            }
            int end = first;
            while (end < rpm.size() && rpm.get(end) < place + step) {
                end++;
            }
            double[] kernel = kernel(place, first, end);
            if (kernel.length > 0) {
                points.add(rows.axes().point(place, Torque.ofNewtonMetres(mean(place, first, kernel)), kernel.length));
                firsts.add(first);
                weights.add(kernel);
            }
        }
        return points;
    }

    /** The curve; empty where no row lies near a point of the grid. */
    Optional<RawCurve> curve(List<Finding> findings) {
        List<Integer> firsts = new ArrayList<>();
        List<double[]> weights = new ArrayList<>();
        List<CurvePoint> points = points(firsts, weights);
        if (points.isEmpty()) {
            return Optional.empty();
        }
        double[] variance = new double[rpm.size()];
        Arrays.fill(variance, rowVariance());
        CurveNoise noise = new CurveNoise(
                firsts.stream().mapToInt(Integer::intValue).toArray(), weights.toArray(double[][]::new), variance);
        return Optional.of(new RawCurve(grid, rows.axes(), points, noise, findings));
    }

    private double[] kernel(double place, int first, int end) {
        double[] weights = new double[end - first];
        double sum = 0;
        double most = 0;
        for (int index = 0; index < weights.length; index++) {
            weights[index] = 1 - Math.abs(rpm.get(first + index) - place) / grid.stepRpm();
            sum += weights[index];
            most = Math.max(most, weights[index]);
        }
        if (most < LEAST_WEIGHT) {
            return new double[0];
        }
        for (int index = 0; index < weights.length; index++) {
            weights[index] /= sum;
        }
        return weights;
    }

    private double mean(double place, int first, double[] kernel) {
        double slope = wideAt(place).slope();
        double sum = 0;
        for (int index = 0; index < kernel.length; index++) {
            int row = first + index;
            sum += kernel[index] * (torque.get(row) + slope * (place - rpm.get(row)));
        }
        return sum;
    }

    private WindowQuadratic.Local wideAt(double place) {
        return wide.at(place, WIDE_STEPS * grid.stepRpm(), LEAST_WIDE_ROWS);
    }

    private double rowVariance() {
        double[] residual = new double[rpm.size()];
        for (int index = 0; index < order.length; index++) {
            residual[order[index]] = torque.get(index) - wideAt(rpm.get(index)).value();
        }
        double windows = Math.max(1, (rpm.last() - rpm.first()) / (2 * WIDE_STEPS * grid.stepRpm()));
        return RowNoise.effectiveVariance(Series.of(residual), 3 * windows);
    }
}
