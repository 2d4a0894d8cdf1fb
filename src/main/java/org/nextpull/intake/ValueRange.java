package org.nextpull.intake;

/**
 * A closed range of values in the project's unit.
 *
 * @param low lower end
 * @param high upper end
 */
record ValueRange(double low, double high) {
    /** Whatever is finite. */
    static final ValueRange ANY = new ValueRange(-Double.MAX_VALUE, Double.MAX_VALUE);

    private static final double ZERO_CELSIUS_K = 273.15;

    static ValueRange ofCelsius(double low, double high) {
        return new ValueRange(low + ZERO_CELSIUS_K, high + ZERO_CELSIUS_K);
    }

    boolean holds(double value) {
        return value >= low && value <= high;
    }
}
