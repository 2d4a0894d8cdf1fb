package org.nextpull.fit;

import java.util.Arrays;

/** The most advance that each row may have, where knock or a limit stands; infinite where none does. Immutable. */
public final class RowCaps {
    private final double[] deg;

    private RowCaps(double[] deg) {
        this.deg = deg;
    }

    /** No cap anywhere. */
    public static RowCaps none(int rows) {
        double[] deg = new double[rows];
        Arrays.fill(deg, Double.POSITIVE_INFINITY);
        return new RowCaps(deg);
    }

    /**
     * Those caps.
     *
     * @param deg most advance of each row; positive infinity for none
     * @throws IllegalArgumentException where one is no number
     */
    public static RowCaps ofDeg(double... deg) {
        if (Arrays.stream(deg).anyMatch(Double::isNaN)) {
            throw new IllegalArgumentException("caps: " + Arrays.toString(deg));
        }
        return new RowCaps(deg.clone());
    }

    public double deg(int row) {
        return deg[row];
    }

    public boolean isCapped(int row) {
        return deg[row] < Double.POSITIVE_INFINITY;
    }

    /** The lowest of all rows. */
    public double lowest() {
        return Arrays.stream(deg).min().orElse(Double.POSITIVE_INFINITY);
    }
}
