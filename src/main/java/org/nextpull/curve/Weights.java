package org.nextpull.curve;

import org.nextpull.math.Series;

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
