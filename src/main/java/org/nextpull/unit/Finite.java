package org.nextpull.unit;

/** The rules that scalar records share: no NaN and no infinity, and of some nothing that is not above 0. */
public final class Finite {
    private Finite() {}

    /**
     * Passes a finite number.
     *
     * @throws IllegalArgumentException for NaN or an infinite number
     */
    public static void require(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is not a finite number: " + value);
        }
    }

    /**
     * Passes a finite number above 0.
     *
     * @param name what the number is, as the message begins
     * @throws IllegalArgumentException for NaN, an infinite number, 0 and what is below
     */
    public static void requirePositive(String name, double value) {
        if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(name + " is a finite number above 0, not " + value);
        }
    }
}
