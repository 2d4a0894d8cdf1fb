package org.nextpull.math.smooth;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;
import org.apache.commons.math3.fraction.BigFractionField;
import org.apache.commons.math3.linear.Array2DRowFieldMatrix;
import org.apache.commons.math3.linear.FieldLUDecomposition;
import org.apache.commons.math3.linear.FieldMatrix;
import org.nextpull.math.Series;

/**
 * Smoothing and derivatives of evenly spaced readings by a sliding least-squares polynomial (Savitzky and Golay, Analytical
 * Chemistry 36, 1964). Within half a window of an end the polynomial of the outermost window is read off beside its middle. The
 * weights are worked out in exact fractions and rounded once.
 */
public final class SavitzkyGolay {
    private final int half;
    private final int derivative;
    private final List<Series> weights;

    private SavitzkyGolay(int half, int derivative, List<Series> weights) {
        this.half = half;
        this.derivative = derivative;
        this.weights = List.copyOf(weights);
    }

    /** Smooths: odd window of readings, degree below the window. */
    public static SavitzkyGolay smoothing(int window, int degree) {
        return of(window, degree, 0);
    }

    /** Differentiates: odd window of readings, degree below the window, derivative from 1 to the degree. */
    public static SavitzkyGolay derivative(int window, int degree, int derivative) {
        return of(window, degree, derivative);
    }

    private static SavitzkyGolay of(int window, int degree, int derivative) {
        if (window < 1 || window % 2 == 0 || degree < 0 || degree >= window || derivative < 0 || derivative > degree) {
            throw new IllegalArgumentException(
                    "no filter of window " + window + ", degree " + degree + ", derivative " + derivative);
        }
        int half = window / 2;
        FieldMatrix<BigFraction> powers =
                new Array2DRowFieldMatrix<>(BigFractionField.getInstance(), degree + 1, window);
        for (int power = 0; power <= degree; power++) {
            for (int place = -half; place <= half; place++) {
                powers.setEntry(power, place + half, new BigFraction(place).pow(power));
            }
        }
        FieldMatrix<BigFraction> normal = powers.multiply(powers.transpose());
        FieldMatrix<BigFraction> fit =
                new FieldLUDecomposition<>(normal).getSolver().getInverse().multiply(powers);
        List<Series> weights = new ArrayList<>();
        for (int place = -half; place <= half; place++) {
            weights.add(weightsAt(fit, place, derivative));
        }
        return new SavitzkyGolay(half, derivative, weights);
    }

    private static Series weightsAt(FieldMatrix<BigFraction> fit, int place, int derivative) {
        return Series.generate(fit.getColumnDimension(), reading -> {
            BigFraction sum = BigFraction.ZERO;
            for (int power = derivative; power < fit.getRowDimension(); power++) {
                BigFraction term = new BigFraction(place).pow(power - derivative);
                for (int factor = power; factor > power - derivative; factor--) {
                    term = term.multiply(factor);
                }
                sum = sum.add(term.multiply(fit.getEntry(power, reading)));
            }
            return sum.doubleValue();
        });
    }

    public int window() {
        return 2 * half + 1;
    }

    /** Weights of the window's readings for the value at a place, 0 in the middle, negative toward the start. */
    public Series weights(int place) {
        return weights.get(place + half);
    }

    /**
     * Filters readings, at least a window of them, that lie {@code spacing} apart; a derivative is per unit of the spacing.
     *
     * @throws IllegalArgumentException with fewer readings than the window or a spacing not above 0
     */
    public Series apply(Series readings, double spacing) {
        if (readings.size() < window() || !(spacing > 0)) {
            throw new IllegalArgumentException(
                    readings.size() + " readings, " + spacing + " apart, do not fill a window of " + window());
        }
        double scale = Math.pow(spacing, -derivative);
        int last = readings.size() - 1 - half;
        return Series.generate(readings.size(), index -> {
            int centre = Math.max(half, Math.min(last, index));
            Series own = weights(index - centre);
            double sum = 0;
            for (int place = 0; place < own.size(); place++) {
                sum += own.get(place) * readings.get(centre - half + place);
            }
            return sum * scale;
        });
    }
}
