package org.nextpull.engine;

import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

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
}
