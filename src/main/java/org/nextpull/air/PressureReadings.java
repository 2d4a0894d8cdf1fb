package org.nextpull.air;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Pressure;

/**
 * Whatever is known about the pressure of a day, for {@link PressureCheck}; all may be absent.
 *
 * @param given barometer that somebody typed in
 * @param logged median of the logger's barometer
 * @param manifoldAtRest manifold pressure with the engine stopped
 * @param manifoldAtFullLoad manifold pressure at full load of a naturally aspirated engine; leave it out for a boosted one
 * @param altitudeMetres altitude of the dyno above sea level in m; the standard atmosphere has one from -5,000 to 11,000 m
 */
public record PressureReadings(
        Optional<Pressure> given,
        Optional<Pressure> logged,
        Optional<Pressure> manifoldAtRest,
        Optional<Pressure> manifoldAtFullLoad,
        OptionalDouble altitudeMetres) {

    public static PressureReadings none() {
        return new PressureReadings(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty());
    }

    public PressureReadings withGiven(Pressure pressure) {
        return new PressureReadings(Optional.of(pressure), logged, manifoldAtRest, manifoldAtFullLoad, altitudeMetres);
    }

    /**
     * The same with the altitude of the dyno.
     *
     * @param metres above sea level, from -5,000 to 11,000
     */
    public PressureReadings withAltitude(double metres) {
        return new PressureReadings(given, logged, manifoldAtRest, manifoldAtFullLoad, OptionalDouble.of(metres));
    }

    /** The barometer that will be used: the logger's, else the one typed in. */
    public Optional<Pressure> barometer() {
        return logged.or(() -> given);
    }
}
