package org.nextpull.unit;

/**
 * Absolute pressure unless a name says gauge.
 *
 * @param pascals pressure in Pa, finite
 */
public record Pressure(double pascals) {
    /**
     * Accepts any finite number; a gauge pressure may be negative.
     *
     * @throws IllegalArgumentException for NaN or an infinite pressure
     */
    public Pressure {
        Finite.require("pressure", pascals);
    }

    /**
     * From Pa.
     *
     * @param pascals any finite number
     * @throws IllegalArgumentException for NaN or an infinite pressure
     */
    public static Pressure ofPascals(double pascals) {
        return new Pressure(pascals);
    }

    /**
     * From kPa.
     *
     * @param kilopascals any finite number
     * @throws IllegalArgumentException for NaN or an infinite pressure
     */
    public static Pressure ofKilopascals(double kilopascals) {
        return new Pressure(kilopascals * 1000);
    }

    /** The pressure in kPa. */
    public double kilopascals() {
        return pascals / 1000;
    }
}
