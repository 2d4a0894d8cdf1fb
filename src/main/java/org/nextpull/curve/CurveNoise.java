package org.nextpull.curve;

import java.util.List;
import org.nextpull.math.Series;

/**
 * How the noise of the rows goes into the points of a curve, so that the error of any mean of points can be told. A point is a weighted
 * mean of elements (rows of a sweep, plateaus of a stepped pull); neighbouring points share elements.
 */
final class CurveNoise {
    static final CurveNoise LEFT_OUT = new CurveNoise(List.of(), Series.empty());

    private static final int LONGEST_LAG = 2000;

    private final List<Weights> points;
    private final Series variance;

    /**
     * Noise of the elements and their weights in the points.
     *
     * @param points for each point the weights of its elements
     * @param variance variance of each element that independent noise of the same effect would have
     */
    CurveNoise(List<Weights> points, Series variance) {
        this.points = List.copyOf(points);
        this.variance = variance;
    }

    /** Standard error of the weighted sum of the points from {@code firstPoint} on. */
    double errorOfSum(int firstPoint, Series pointWeights) {
        if (points.isEmpty()) {
            throw new IllegalStateException("the noise of this curve was left out");
        }
        double[] load = new double[variance.size()];
        for (int point = 0; point < pointWeights.size(); point++) {
            Weights own = points.get(firstPoint + point);
            for (int index = 0; index < own.count(); index++) {
                load[own.first() + index] +=
                        pointWeights.get(point) * own.each().get(index);
            }
        }
        double sum = 0;
        for (int element = 0; element < load.length; element++) {
            sum += load[element] * load[element] * variance.get(element);
        }
        return Math.sqrt(sum);
    }

    /**
     * How much each element weighs in a point of a curve.
     *
     * @param first the first element that weighs
     * @param each weights from that element on, of sum 1
     */
    record Weights(int first, Series each) {
        int count() {
            return each.size();
        }
    }

    /**
     * Variance that independent rows would need to give a mean the same error. Neighbouring rows of a log are rarely independent: filters
     * of the instruments and the engine's own swing carry over. The variance of single rows about a smooth curve is therefore multiplied by
     * the integrated autocorrelation time, 1 + 2 sum(rho), with the sum cut off at the first pair of lags that is not positive (initial
     * positive sequence: Geyer, Statistical Science 7, 1992, 473-483).
     *
     * @param residual what is left of the rows, in order of time
     * @param fitted parameters that the smooth curve took from them
     */
    static double effectiveVariance(Series residual, double fitted) {
        int rows = residual.size();
        if (rows < 3) {
            return 0;
        }
        double[] r = residual.toArray();
        double zero = covariance(r, 0);
        if (zero == 0) {
            return 0;
        }
        double time = 1;
        int most = Math.min(LONGEST_LAG, rows / 4);
        for (int lag = 1; lag < most; lag += 2) {
            double pair = (covariance(r, lag) + covariance(r, lag + 1)) / zero;
            if (pair <= 0) {
                break;
            }
            time += 2 * pair;
        }
        return zero * time * rows / Math.max(1, rows - fitted);
    }

    private static double covariance(double[] r, int lag) {
        double sum = 0;
        for (int row = lag; row < r.length; row++) {
            sum += r[row] * r[row - lag];
        }
        return sum / r.length;
    }
}
