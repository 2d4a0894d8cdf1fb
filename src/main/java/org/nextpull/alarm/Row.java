package org.nextpull.alarm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.pull.KnockReading;

/** One row of samples. */
record Row(BlockView view, int index, Alarm.RowPlace moment) {
    static Row of(BlockView view, int index) {
        return new Row(
                view,
                index,
                new Alarm.RowPlace(view.samples().line(index), view.samples().find(Role.TIME, index)));
    }

    /** The first sensor of a role. */
    OptionalDouble find(Role role) {
        return view.samples().find(role, index);
    }

    OptionalDouble find(Channel sensor) {
        return view.samples().find(sensor, index);
    }

    List<Channel> sensors(Role role) {
        return view.sensors(role);
    }

    /** Samples with their channels by role, so that each row is looked at without searching for them. */
    static final class BlockView {
        private final Map<Role, List<Channel>> sensors = new EnumMap<>(Role.class);
        private final Samples samples;
        private final KnockReading knock;

        BlockView(Samples samples) {
            this.samples = samples;
            this.knock = KnockReading.of(samples);
            for (Channel channel : samples.channels()) {
                sensors.computeIfAbsent(channel.role(), role -> new ArrayList<>(1))
                        .add(channel);
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
}
