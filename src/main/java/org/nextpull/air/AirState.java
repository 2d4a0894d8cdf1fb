package org.nextpull.air;

import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/**
 * The air that an engine breathes.
 *
 * @param barometer total pressure at the engine (station pressure, not reduced to sea level), positive
 * @param temperature temperature of the inlet air (dry bulb)
 * @param vapour partial pressure of water vapour, from 0 to below the barometer
 */
public record AirState(Pressure barometer, Temperature temperature, Pressure vapour) {
    public AirState {
        if (barometer.pascals() <= 0) {
            throw new IllegalArgumentException("barometer must be positive: " + barometer.pascals() + " Pa");
        }
        if (vapour.pascals() < 0 || vapour.pascals() >= barometer.pascals()) {
            throw new IllegalArgumentException(
                    "vapour pressure must lie between 0 and the barometer: " + vapour.pascals() + " Pa");
        }
    }

    /** Air without water vapour. */
    public static AirState dry(Pressure barometer, Temperature temperature) {
        return new AirState(barometer, temperature, Pressure.ofPascals(0));
    }

    /** Barometer less vapour pressure: the part that holds the oxygen. */
    public Pressure dryPressure() {
        return Pressure.ofPascals(barometer.pascals() - vapour.pascals());
    }

    /** Density in kg/m3 of the moist air, as the sum of two ideal gases. */
    public double density() {
        double t = temperature.kelvins();
        return dryPressure().pascals() / (MoistAir.DRY_AIR_GAS_CONSTANT * t)
                + vapour.pascals() / (MoistAir.VAPOUR_GAS_CONSTANT * t);
    }

    /** Humidity ratio: kg of water vapour for each kg of dry air. */
    public double humidityRatio() {
        return MoistAir.MASS_RATIO * vapour.pascals() / dryPressure().pascals();
    }

    /** Relative humidity as a fraction: vapour pressure over saturation pressure at the air's temperature. */
    public double relativeHumidity() {
        return vapour.pascals() / HylandWexler.saturationPressure(temperature).pascals();
    }
}
