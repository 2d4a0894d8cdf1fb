package org.nextpull.engine;

import org.nextpull.unit.Pressure;

/**
 * Pressure that a charger adds to the inlet.
 *
 * @param full gauge pressure once the charger is up; zero for a natural engine
 * @param fullRpm speed from which it is up
 */
public record Boost(Pressure full, double fullRpm) {
    private static final double COMPRESSOR_EXPONENT = 0.4;
    private static final double COOLED_SHARE = 0.65;

    public static Boost none() {
        return new Boost(Pressure.ofPascals(0), 1);
    }

    /** The same charger on a pull on which it blows so much more or less. */
    Boost times(double factor) {
        return new Boost(Pressure.ofPascals(full.pascals() * factor), fullRpm);
    }

    public boolean isNone() {
        return full.pascals() == 0;
    }

    /** Gauge pressure in Pa at a speed. */
    double pascals(double rpm) {
        double share = Math.min(1, rpm / fullRpm);
        return full.pascals() * share * share * (3 - 2 * share);
    }

    /** Rise of the charge temperature in K behind the charge cooler. */
    double heating(double kelvins, double pressureRatio) {
        return kelvins * (Math.pow(pressureRatio, COMPRESSOR_EXPONENT) - 1) * (1 - COOLED_SHARE);
    }
}
