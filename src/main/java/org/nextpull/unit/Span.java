package org.nextpull.unit;

/**
 * Two bounds of one quantity, both included.
 *
 * @param low lower bound, finite
 * @param high upper bound, finite and not below the lower one
 */
public record Span(double low, double high) {
    public Span {
        Finite.require("lower bound", low);
        Finite.require("upper bound", high);
        if (low > high) {
            throw new IllegalArgumentException("bounds in the wrong order: " + low + " and " + high);
        }
    }

    public static Span of(double low, double high) {
        return new Span(low, high);
    }

    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    public double width() {
        return high - low;
    }
}
