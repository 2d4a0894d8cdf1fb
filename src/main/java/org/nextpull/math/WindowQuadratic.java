package org.nextpull.math;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Least-squares quadratics through the points in a window that moves along x. For evenly spaced points and a window of an odd number
 * of them it is the Savitzky-Golay filter of degree 2 (Savitzky and Golay, Analytical Chemistry 36, 1964, 1627-1639); here the points
 * may be spaced as they like and the window may be cut off at the ends.
 */
public final class WindowQuadratic {
    private final double[] x;
    private final double[] y;

    /**
     * Points to fit.
     *
     * @param x abscissas, never falling
     * @param y as many ordinates
     * @throws IllegalArgumentException when there is no point, the numbers of x and y differ, or x falls
     */
    public WindowQuadratic(Series x, Series y) {
        if (x.size() != y.size() || x.isEmpty()) {
            throw new IllegalArgumentException("needs as many x as y: " + x.size() + " and " + y.size());
        }
        this.x = x.toArray();
        this.y = y.toArray();
        for (int index = 1; index < this.x.length; index++) {
            if (this.x[index] < this.x[index - 1]) {
                throw new IllegalArgumentException("x falls at index " + index);
            }
        }
    }

    /**
     * Value and slope of a fit at one place.
     *
     * @param value ordinate of the fit
     * @param slope its first derivative
     */
    public record Local(double value, double slope) {}

    /**
     * The quadratic through the points that lie no further than half the window away, taken at its middle. A window that holds fewer
     * than {@code least} points is widened to the nearest of them; where the points allow no quadratic the fit is a line or a mean.
     */
    public Local at(double middle, double halfWindow, int least) {
        return widened(
                middle, firstAtOrAbove(lower(middle, halfWindow)), firstAtOrAbove(above(middle, halfWindow)), least);
    }

    /** The same at each of the points: the window moves along and is not looked up anew. */
    public List<Local> atEach(double halfWindow, int least) {
        List<Local> all = new ArrayList<>(x.length);
        int first = 0;
        int end = 0;
        for (double middle : x) {
            while (x[first] < lower(middle, halfWindow)) {
                first++;
            }
            while (end < x.length && x[end] < above(middle, halfWindow)) {
                end++;
            }
            all.add(widened(middle, first, end, least));
        }
        return all;
    }

    private static double lower(double middle, double halfWindow) {
        return middle - halfWindow * (1 + 1e-9);
    }

    private static double above(double middle, double halfWindow) {
        return Math.nextUp(middle + halfWindow * (1 + 1e-9));
    }

    private Local widened(double middle, int windowFirst, int windowEnd, int least) {
        int first = windowFirst;
        int end = windowEnd;
        while (end - first < Math.min(least, x.length)) {
            boolean takeLower = end == x.length || (first > 0 && middle - x[first - 1] <= x[end] - middle);
            if (takeLower) {
                first--;
            } else {
                end++;
            }
        }
        return fit(middle, first, end);
    }

    private int firstAtOrAbove(double place) {
        int found = Arrays.binarySearch(x, place);
        if (found < 0) {
            return -found - 1;
        }
        while (found > 0 && x[found - 1] == place) {
            found--;
        }
        return found;
    }

    private Local fit(double middle, int first, int end) {
        double scale = Math.max(Math.abs(x[first] - middle), Math.abs(x[end - 1] - middle));
        if (scale == 0) {
            return new Local(mean(first, end), 0);
        }
        double m1 = 0;
        double m2 = 0;
        double m3 = 0;
        double m4 = 0;
        double b0 = 0;
        double b1 = 0;
        double b2 = 0;
        for (int index = first; index < end; index++) {
            double u = (x[index] - middle) / scale;
            double square = u * u;
            double cube = square * u;
            m1 += u;
            m2 += square;
            m3 += cube;
            m4 += cube * u;
            b0 += y[index];
            b1 += u * y[index];
            b2 += square * y[index];
        }
        return solve(new double[] {end - first, m1, m2, m3, m4}, new double[] {b0, b1, b2}, scale);
    }

    private static Local solve(double[] m, double[] b, double scale) {
        double spread = m[2] - m[1] * m[1] / m[0];
        if (spread <= 1e-12 * m[0]) {
            return new Local(b[0] / m[0], 0);
        }
        double skew = m[3] - m[1] * m[2] / m[0];
        double bend = m[4] - m[2] * m[2] / m[0] - skew * skew / spread;
        double first = b[1] - m[1] * b[0] / m[0];
        double second = b[2] - m[2] * b[0] / m[0] - skew * first / spread;
        double curvature = bend <= 1e-12 * m[0] ? 0 : second / bend;
        double slope = (first - skew * curvature) / spread;
        double value = (b[0] - m[1] * slope - m[2] * curvature) / m[0];
        return new Local(value, slope / scale);
    }

    private double mean(int first, int end) {
        double sum = 0;
        for (int index = first; index < end; index++) {
            sum += y[index];
        }
        return sum / (end - first);
    }
}
