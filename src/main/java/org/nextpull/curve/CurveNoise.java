package org.nextpull.curve;

import java.util.List;
import org.nextpull.math.Series;

/**
 * How the noise of the rows goes into the points of a curve, so that the error of any mean of points can be told. A point is a weighted
 * mean of elements (rows of a sweep, plateaus of a stepped pull); neighbouring points share elements.
 */
final class CurveNoise {
    static final CurveNoise LEFT_OUT = new CurveNoise(List.of(), Series.empty());

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
}
