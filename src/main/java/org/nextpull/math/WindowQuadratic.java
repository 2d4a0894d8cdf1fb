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
            double u = x[index] - middle;
            double v = y[index];
            double square = u * u;
            m1 += u;
            m2 += square;
            m3 += square * u;
            m4 += square * square;
            b0 += v;
            b1 += u * v;
            b2 += square * v;
        }
        // in units of the window's half, in which the moments are of one size
        m1 /= scale;
        m2 /= scale * scale;
        b1 /= scale;
        int count = end - first;
        double spread = m2 - m1 * m1 / count;
        if (spread <= 1e-12 * count) {
            return new Local(b0 / count, 0);
        }
        double skew = m3 / (scale * scale * scale) - m1 * m2 / count;
        double bend = m4 / (scale * scale * scale * scale) - m2 * m2 / count - skew * skew / spread;
        double slopeAlone = b1 - m1 * b0 / count;
        double second = b2 / (scale * scale) - m2 * b0 / count - skew * slopeAlone / spread;
        double curvature = bend <= 1e-12 * count ? 0 : second / bend;
        double slope = (slopeAlone - skew * curvature) / spread;
        double value = (b0 - m1 * slope - m2 * curvature) / count;
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
