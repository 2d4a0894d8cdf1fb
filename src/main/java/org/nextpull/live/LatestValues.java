package org.nextpull.live;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.nextpull.advice.PresentConditions;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.unit.Temperature;

/** The latest value of each channel, and the conditions of the moment that follow from them. */
final class LatestValues {
    /** A temperature that has not come for so long is not known any more. */
    private static final double PRESENT_S = 10;

    private record Seen(double value, double atS) {}

    private final Map<Channel, Seen> seen = new LinkedHashMap<>();

    void take(Samples samples, ArrivalTime at) {
        int rows = samples.rows();
        for (Channel channel : samples.channels()) {
            for (int row = rows - 1; row >= 0; row--) {
                if (samples.isPresent(channel, row)) {
                    seen.put(channel, new Seen(samples.value(channel, row), at.seconds()));
                    break;
                }
            }
        }
    }

    List<LiveState.LatestValue> all(ArrivalTime now) {
        return seen.entrySet().stream()
                .filter(entry -> entry.getKey().role() != Role.TIME)
                .map(entry -> new LiveState.LatestValue(
                        entry.getKey(),
                        entry.getValue().value(),
                        Math.max(0, now.seconds() - entry.getValue().atS())))
                .toList();
    }

    PresentConditions conditions(ArrivalTime now) {
        return conditions(all(now));
    }

    static PresentConditions conditions(List<LiveState.LatestValue> values) {
        return new PresentConditions(
                first(Role.COOLANT_TEMPERATURE, values),
                first(Role.OIL_TEMPERATURE, values),
                first(Role.INLET_AIR_TEMPERATURE, values),
                temperature(present(Role.EXHAUST_TEMPERATURE, values).max()));
    }

    private static Optional<Temperature> first(Role role, List<LiveState.LatestValue> values) {
        return temperature(present(role, values).findFirst());
    }

    private static DoubleStream present(Role role, List<LiveState.LatestValue> values) {
        return values.stream()
                .filter(value -> value.channel().role() == role && value.ageS() <= PRESENT_S)
                .mapToDouble(LiveState.LatestValue::value);
    }

    private static Optional<Temperature> temperature(OptionalDouble kelvins) {
        return kelvins.isPresent() && kelvins.getAsDouble() >= 0
                ? Optional.of(Temperature.ofKelvins(kelvins.getAsDouble()))
                : Optional.empty();
    }
}
