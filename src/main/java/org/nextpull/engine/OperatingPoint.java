package org.nextpull.engine;

import org.nextpull.air.AirState;
import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/**
 * Where an engine runs, always at full load.
 *
 * @param rpm engine speed
 * @param advance spark advance
 * @param lambda mixture
 * @param fuel fuel
 * @param surroundings air, coolant and oil
 */
public record OperatingPoint(double rpm, Advance advance, Lambda lambda, EngineFuel fuel, Surroundings surroundings) {
    public OperatingPoint atRpm(double other) {
        return new OperatingPoint(other, advance, lambda, fuel, surroundings);
    }

    public OperatingPoint atAdvance(double deg) {
        return new OperatingPoint(rpm, Advance.ofDeg(deg), lambda, fuel, surroundings);
    }

    public OperatingPoint atLambda(double value) {
        return new OperatingPoint(rpm, advance, Lambda.of(value), fuel, surroundings);
    }

    public OperatingPoint on(EngineFuel other) {
        return new OperatingPoint(rpm, advance, lambda, other, surroundings);
    }

    public OperatingPoint in(Surroundings other) {
        return new OperatingPoint(rpm, advance, lambda, fuel, other);
    }

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
}
