package org.nextpull.engine;

import org.nextpull.air.AirState;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/**
 * What an engine runs in.
 *
 * @param air the air that it breathes
 * @param coolant coolant temperature
 * @param oil oil temperature
 */
public record Surroundings(AirState air, Temperature coolant, Temperature oil) {
    /** A warm engine in air of 99 kPa dry and 25 degC, the reference of common correction standards. */
    public static Surroundings reference() {
        return new Surroundings(
                new AirState(Pressure.ofKilopascals(100), Temperature.ofCelsius(25), Pressure.ofKilopascals(1)),
                Temperature.ofCelsius(90),
                Temperature.ofCelsius(95));
    }
}
