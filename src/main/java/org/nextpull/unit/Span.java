package org.nextpull.unit;

/**
 * Two bounds of one quantity, both included.
 *
 * @param low lower bound, finite
 * @param high upper bound, finite and not below the lower one
 */
public record Span(double low, double high) {
    /**
     * Accepts two finite bounds; they may be equal.
     *
     * @throws IllegalArgumentException for NaN or an infinite bound, and when the lower bound is above the upper one
     */
    public Span {
        Finite.require("lower bound", low);
        Finite.require("upper bound", high);
        if (low > high) {
            throw new IllegalArgumentException("bounds in the wrong order: " + low + " and " + high);
        }
    }

    /**
     * Two bounds in one unit, which is that of the quantity they bound.
     *
     * @param low lower bound, finite
     * @param high upper bound, finite and not below the lower one
     * @throws IllegalArgumentException for NaN or an infinite bound, and when the lower bound is above the upper one
     */
    public static Span of(double low, double high) {
        return new Span(low, high);
    }

    /** Whether a value lies between the bounds, which both belong to the span; NaN never does. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /** Upper less lower bound, in their unit; 0 when they are equal. */
    public double width() {
        return high - low;
    }
}
