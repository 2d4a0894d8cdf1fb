package org.nextpull.unit;

/**
 * Thermodynamic temperature.
 *
 * @param kelvins temperature in K, finite and not negative
 */
public record Temperature(double kelvins) {
    private static final double ICE_POINT_K = 273.15;

    /**
     * Accepts absolute zero and all above it.
     *
     * @throws IllegalArgumentException for NaN, an infinite temperature and one below absolute zero
     */
    public Temperature {
        Finite.require("temperature", kelvins);
        if (kelvins < 0) {
            throw new IllegalArgumentException("temperature below absolute zero: " + kelvins + " K");
        }
    }

    /**
     * From K.
     *
     * @param kelvins finite, from 0
     * @throws IllegalArgumentException for NaN, an infinite temperature and one below absolute zero
     */
    public static Temperature ofKelvins(double kelvins) {
        return new Temperature(kelvins);
    }

    /**
     * From degC, of which 0 is 273.15 K by definition.
     *
     * @param celsius finite, from -273.15
     * @throws IllegalArgumentException for NaN, an infinite temperature and one below absolute zero
     */
    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius + ICE_POINT_K);
    }

    /** The temperature in degC. */
    public double celsius() {
        return kelvins - ICE_POINT_K;
    }
}
