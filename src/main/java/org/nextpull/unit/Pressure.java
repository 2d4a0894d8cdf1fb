package org.nextpull.unit;

/**
 * Absolute pressure unless a name says gauge.
 *
 * @param pascals pressure in Pa, finite
 */
public record Pressure(double pascals) {
    public Pressure {
        Finite.require("pressure", pascals);
    }

    public static Pressure ofPascals(double pascals) {
        return new Pressure(pascals);
    }

    public static Pressure ofKilopascals(double kilopascals) {
        return new Pressure(kilopascals * 1000);
    }

    public double kilopascals() {
        return pascals / 1000;
    }
}
