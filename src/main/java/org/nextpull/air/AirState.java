package org.nextpull.air;

import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/**
 * The air that an engine breathes. Density and humidity ratio follow ASHRAE Handbook, Fundamentals 2017, chapter 1, equations 1 and 20.
 *
 * @param barometer total pressure at the engine (station pressure, not reduced to sea level), positive
 * @param temperature temperature of the inlet air (dry bulb)
 * @param vapour partial pressure of water vapour, from 0 to below the barometer
 */
public record AirState(Pressure barometer, Temperature temperature, Pressure vapour) {
    /** Gas constant of dry air in J/(kg.K), equation 1. */
    static final double DRY_AIR_GAS_CONSTANT = 287.042;
    /** Molar mass of water over that of dry air, equation 20. */
    static final double MASS_RATIO = 0.621945;
    /** Gas constant of water vapour in J/(kg.K). */
    static final double VAPOUR_GAS_CONSTANT = DRY_AIR_GAS_CONSTANT / MASS_RATIO;

    /**
     * Accepts any positive barometer and a vapour pressure below it; whether people could breathe it is for {@link Weather} to say.
     *
     * @throws IllegalArgumentException when the barometer is not positive, or the vapour pressure is negative or not below the barometer
     */
    public AirState {
        if (barometer.pascals() <= 0) {
            throw new IllegalArgumentException("barometer must be positive: " + barometer.pascals() + " Pa");
        }
        if (vapour.pascals() < 0 || vapour.pascals() >= barometer.pascals()) {
            throw new IllegalArgumentException(
                    "vapour pressure must lie between 0 and the barometer: " + vapour.pascals() + " Pa");
        }
    }

    /**
     * Air without water vapour.
     *
     * @throws IllegalArgumentException when the barometer is not positive
     */
    public static AirState dry(Pressure barometer, Temperature temperature) {
        return new AirState(barometer, temperature, Pressure.ofPascals(0));
    }

    /** Barometer less vapour pressure: the part that holds the oxygen. */
    public Pressure dryPressure() {
        return Pressure.ofPascals(barometer.pascals() - vapour.pascals());
    }

    /** Density in kg/m3 of the moist air, as the sum of two ideal gases; infinite at absolute zero. */
    public double density() {
        double t = temperature.kelvins();
        return dryPressure().pascals() / (DRY_AIR_GAS_CONSTANT * t) + vapour.pascals() / (VAPOUR_GAS_CONSTANT * t);
    }

    /** Humidity ratio: kg of water vapour for each kg of dry air. */
    public double humidityRatio() {
        return MASS_RATIO * vapour.pascals() / dryPressure().pascals();
    }

    /**
     * Relative humidity as a fraction, 0.5 for 50 %: vapour pressure over saturation pressure at the air's temperature, over ice where it
     * freezes. Above 1 for air that could not hold so much.
     *
     * @throws IllegalArgumentException where the temperature lies outside {@link HylandWexler#VALID_KELVINS}
     */
    public double relativeHumidity() {
        return vapour.pascals() / HylandWexler.saturationPressure(temperature).pascals();
    }
}
