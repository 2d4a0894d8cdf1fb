package org.nextpull.response;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.air.AirState;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/**
 * Conditions of a pull, medians over the band but for the exhaust.
 *
 * @param hottestExhaust highest exhaust temperature of any sensor, over the band
 * @param manifold band-average manifold pressure
 * @param injectorDuty highest over the band, as a fraction; empty where no channel has it
 * @param air the air that the engine breathed; empty where it is not known
 */
public record Conditions(
        Optional<Temperature> coolant,
        Optional<Temperature> oil,
        Optional<Temperature> inletAir,
        Optional<Temperature> hottestExhaust,
        Optional<Pressure> manifold,
        OptionalDouble injectorDuty,
        Optional<AirState> air) {
    public static Conditions unknown() {
        return new Conditions(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }
}
