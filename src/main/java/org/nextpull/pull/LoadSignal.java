package org.nextpull.pull;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.unit.Power;

/**
 * What tells how hard the engine works: its torque, or its power over its speed.
 *
 * @param channel torque or power
 * @param speed where the speed is read from
 */
record LoadSignal(Channel channel, SpeedSource speed) {
    static final Channel TORQUE = Channel.of(Role.TORQUE);
    static final Channel POWER = Channel.of(Role.POWER);

    static Optional<LoadSignal> of(Samples samples, SpeedSource speed) {
        if (samples.has(TORQUE)) {
            return Optional.of(new LoadSignal(TORQUE, speed));
        }
        return samples.has(POWER) ? Optional.of(new LoadSignal(POWER, speed)) : Optional.empty();
    }

    /** Torque of a row in N.m, at the shaft of the speed. */
    OptionalDouble newtonMetres(Samples samples, int row) {
        if (!samples.isPresent(channel, row)) {
            return OptionalDouble.empty();
        }
        double value = samples.value(channel, row);
        if (channel.role() == Role.TORQUE) {
            return OptionalDouble.of(value);
        }
        double rpm = speed.rpm(samples, row).orElse(0);
        return rpm > 0 ? OptionalDouble.of(Power.ofWatts(value).torqueAt(rpm).newtonMetres()) : OptionalDouble.empty();
    }
}
