package org.nextpull.response;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.air.AirState;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.math.Series;
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

    static Conditions of(Samples samples, Optional<AirState> air) {
        return new Conditions(
                median(samples, Role.COOLANT_TEMPERATURE),
                median(samples, Role.OIL_TEMPERATURE),
                median(samples, Role.INLET_AIR_TEMPERATURE),
                hottestExhaust(samples),
                manifold(samples),
                Arrays.stream(samples.presentValues(Channel.of(Role.INJECTOR_DUTY)))
                        .max(),
                air);
    }

    private static Optional<Temperature> median(Samples samples, Role role) {
        double[] values = samples.presentValues(Channel.of(role));
        return values.length == 0
                ? Optional.empty()
                : Optional.of(Temperature.ofKelvins(Series.of(values).median()));
    }

    private static Optional<Temperature> hottestExhaust(Samples samples) {
        return samples.channels().stream()
                .filter(channel -> channel.role() == Role.EXHAUST_TEMPERATURE)
                .flatMap(
                        channel -> Arrays.stream(samples.presentValues(channel)).boxed())
                .max(Double::compare)
                .map(Temperature::ofKelvins);
    }

    private static Optional<Pressure> manifold(Samples samples) {
        double[] values = samples.presentValues(Channel.of(Role.MANIFOLD_PRESSURE));
        return values.length == 0
                ? Optional.empty()
                : Optional.of(Pressure.ofPascals(Arrays.stream(values).average().orElseThrow()));
    }
}
