package org.nextpull.curve;

import java.util.Arrays;
import org.nextpull.math.Series;

/**
 * How the noise of the rows goes into the points of a curve, so that the error of any mean of points can be told. A point is a weighted
 * mean of elements (rows of a sweep, plateaus of a stepped pull); neighbouring points share elements.
 */
public final class CurveNoise {
    private final int[] firstElement;
    private final double[][] weights;
    private final double[] variance;

    /**
     * Noise of the elements and their weights in the points.
     *
     * @param firstElement for each point the first element that weighs in it
     * @param weights for each point the weights from that element on, of sum 1
     * @param variance variance of each element that independent noise of the same effect would have
     */
    CurveNoise(int[] firstElement, double[][] weights, double[] variance) {
        this.firstElement = firstElement.clone();
        this.weights = Arrays.stream(weights).map(double[]::clone).toArray(double[][]::new);
        this.variance = variance.clone();
    }

    /** Standard error of the weighted sum of the points from {@code firstPoint} on. */
    double errorOfSum(int firstPoint, Series pointWeights) {
        double[] load = new double[variance.length];
        for (int point = 0; point < pointWeights.size(); point++) {
            int start = firstElement[firstPoint + point];
            double[] own = weights[firstPoint + point];
            for (int index = 0; index < own.length; index++) {
                load[start + index] += pointWeights.get(point) * own[index];
            }
        }
        double sum = 0;
        for (int element = 0; element < load.length; element++) {
            sum += load[element] * load[element] * variance[element];
        }
        return Math.sqrt(sum);
    }
}
