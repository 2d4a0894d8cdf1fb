package org.nextpull.alarm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.pull.KnockReading;

/** Samples with their channels by role, so that each row is looked at without searching for them. */
final class BlockView {
    private final Map<Role, List<Channel>> sensors = new EnumMap<>(Role.class);
    private final Samples samples;
    private final KnockReading knock;

    BlockView(Samples samples) {
        this.samples = samples;
        this.knock = KnockReading.of(samples);
        for (Channel channel : samples.channels()) {
            sensors.computeIfAbsent(channel.role(), role -> new ArrayList<>(1)).add(channel);
        }
    }

    List<Channel> sensors(Role role) {
        return sensors.getOrDefault(role, List.of());
    }

    Samples samples() {
        return samples;
    }

    KnockReading knock() {
        return knock;
    }
}
