package org.nextpull.math.smooth;

import org.nextpull.math.Series;

/**
 * Value and slope of a signal on unevenly spaced places, by a quadratic fitted about each place to the readings within a half width
 * (Cleveland, JASA 74, 1979, with a fixed width). Near the ends the same quadratic is read off at the end. Where fewer than three
 * readings are within reach, the nearest three are taken.
 */
public final class LocalQuadratic {
    /** How readings count with their distance, given as a part of the half width. */
    public enum Kernel {
        /** All alike: on even spacing the same as Savitzky-Golay. */
        EVEN {
            @Override
            double weight(double distance) {
                return 1;
            }
        },
        /** Falling smoothly to zero, so that readings do not enter with a jump. */
        TRICUBE {
            @Override
            double weight(double distance) {
                double rest = 1 - distance * distance * distance;
                return rest * rest * rest;
            }
        };

        abstract double weight(double distance);
    }

    private static final int LEAST = 3;
    private static final double BEYOND_THIRD = 1.0001;
    private static final double ROUNDING = 1e-9;

    private final Series x;
    private final Series y;
    private final double halfWidth;
    private final Kernel kernel;

    private LocalQuadratic(Series x, Series y, double halfWidth, Kernel kernel) {
        this.x = x;
        this.y = y;
        this.halfWidth = halfWidth;
        this.kernel = kernel;
    }

    /**
     * Prepares the readings.
     *
     * @param x increasing places, at least three
     * @param y one reading a place
     * @param halfWidth reach to each side, above 0, in the unit of x
     */
    public static LocalQuadratic of(Series x, Series y, double halfWidth, Kernel kernel) {
        if (x.size() != y.size() || x.size() < LEAST || !x.isIncreasing() || !(halfWidth > 0)) {
            throw new IllegalArgumentException("needs at least three increasing places with a reading each");
        }
        return new LocalQuadratic(x, y, halfWidth, kernel);
    }

    /** Smoothed values at the places of the readings. */
    public Series values() {
        return Series.generate(x.size(), index -> around(x.get(index), index)[0]);
    }

    /** Slopes at the places of the readings, per unit of x. */
    public Series slopes() {
        return Series.generate(x.size(), index -> around(x.get(index), index)[1]);
    }

    /** Smoothed value at any place, best within the readings. */
    public double valueAt(double place) {
        return around(place, nearest(place))[0];
    }

    /** Slope at any place, per unit of x. */
    public double slopeAt(double place) {
        return around(place, nearest(place))[1];
    }

    private int nearest(double place) {
        int low = 0;
        int high = x.size() - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (x.get(middle) <= place) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.abs(x.get(low) - place) <= Math.abs(x.get(high) - place) ? low : high;
    }

    private double[] around(double place, int nearest) {
        double reach = halfWidth * (1 + ROUNDING);
        int first = nearest;
        int last = nearest;
        while (first > 0 && place - x.get(first - 1) <= reach) {
            first--;
        }
        while (last < x.size() - 1 && x.get(last + 1) - place <= reach) {
            last++;
        }
        while (last - first + 1 < LEAST) {
            boolean left = last == x.size() - 1 || (first > 0 && place - x.get(first - 1) <= x.get(last + 1) - place);
            if (left) {
                first--;
            } else {
                last++;
            }
            // a reading at the rim would weigh nothing and leave the quadratic open
            reach = BEYOND_THIRD * Math.max(place - x.get(first), x.get(last) - place);
        }
        return solve(place, reach, first, last);
    }

    /** Orthogonal polynomials on the weighted window: exact for quadratics and well conditioned at the ends. */
    private double[] solve(double place, double reach, int first, int last) {
        double weights = 0;
        double centre = 0;
        double level = 0;
        for (int index = first; index <= last; index++) {
            double weight = weight(index, place, reach);
            weights += weight;
            centre += weight * (x.get(index) - place);
            level += weight * y.get(index);
        }
        centre /= weights;
        level /= weights;
        double second = 0;
        double third = 0;
        double tilt = 0;
        for (int index = first; index <= last; index++) {
            double weight = weight(index, place, reach);
            double u = x.get(index) - place - centre;
            second += weight * u * u;
            third += weight * u * u * u;
            tilt += weight * u * (y.get(index) - level);
        }
        double skew = third / second;
        double spread = second / weights;
        double norm = 0;
        double bend = 0;
        for (int index = first; index <= last; index++) {
            double weight = weight(index, place, reach);
            double u = x.get(index) - place - centre;
            double quadratic = u * (u - skew) - spread;
            norm += weight * quadratic * quadratic;
            bend += weight * quadratic * (y.get(index) - level);
        }
        double slope = tilt / second;
        double curve = norm > 0 ? bend / norm : 0;
        double at = -centre;
        return new double[] {level + slope * at + curve * (at * (at - skew) - spread), slope + curve * (2 * at - skew)};
    }

    private double weight(int index, double place, double reach) {
        return kernel.weight(Math.min(1, Math.abs(x.get(index) - place) / reach));
    }
}
