package org.nextpull.unit;

/**
 * Thermodynamic temperature.
 *
 * @param kelvins temperature in K, finite and not negative
 */
public record Temperature(double kelvins) {
    private static final double ICE_POINT_K = 273.15;

    public Temperature {
        Finite.require("temperature", kelvins);
        if (kelvins < 0) {
            throw new IllegalArgumentException("temperature below absolute zero: " + kelvins + " K");
        }
    }

    public static Temperature ofKelvins(double kelvins) {
        return new Temperature(kelvins);
    }

    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius + ICE_POINT_K);
    }

    public double celsius() {
        return kelvins - ICE_POINT_K;
    }
}
