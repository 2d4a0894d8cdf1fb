package org.nextpull.unit;

/** The one rule that all scalar records share: no NaN and no infinity. */
final class Finite {
    private Finite() {}

    /**
     * Passes a finite number.
     *
     * @throws IllegalArgumentException for NaN or an infinite number
     */
    static void require(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is not a finite number: " + value);
        }
    }
}
