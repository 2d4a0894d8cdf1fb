package org.nextpull.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.air.NoCorrection;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/**
 * The correction standard and the weather where the log has none, table {@code [air]}.
 *
 * @param standard the standard that torque is corrected by
 * @param baro station pressure, absolute
 * @param air temperature of the air that the engine breathes
 * @param humidity relative humidity, 0 to 1
 */
public record AirFacts(
        CorrectionStandard standard, Optional<Pressure> baro, Optional<Temperature> air, OptionalDouble humidity) {
    public static AirFacts defaults() {
        return new AirFacts(new NoCorrection(), Optional.empty(), Optional.empty(), OptionalDouble.empty());
    }
}
