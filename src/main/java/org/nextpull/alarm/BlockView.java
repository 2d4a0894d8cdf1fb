package org.nextpull.alarm;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.pull.KnockReading;

/** Samples laid out by role, so that each row is looked at without searching for its channels. */
final class BlockView {
    private final Map<Role, List<Sensor>> sensors = new EnumMap<>(Role.class);
    private final Samples samples;
    private final KnockReading knock;

    BlockView(Samples samples) {
        this.samples = samples;
        this.knock = KnockReading.of(samples);
        for (Channel channel : samples.channels()) {
            sensors.computeIfAbsent(channel.role(), role -> new ArrayList<>()).add(Sensor.of(samples, channel));
        }
    }

    List<Sensor> sensors(Role role) {
        return sensors.getOrDefault(role, List.of());
    }

    Samples samples() {
        return samples;
    }

    KnockReading knock() {
        return knock;
    }

    long line(int row) {
        return samples.line(row);
    }

    /** One channel of a block. Not shared: its array is never changed after it was filled. */
    static final class Sensor {
        private final Channel channel;
        private final double[] values;
        private final BitSet present;

        private Sensor(Channel channel, double[] values, BitSet present) {
            this.channel = channel;
            this.values = values;
            this.present = present;
        }

        static Sensor of(Samples samples, Channel channel) {
            double[] values = new double[samples.rows()];
            BitSet present = new BitSet(samples.rows());
            int[] rows = samples.presentRows(channel);
            double[] found = samples.presentValues(channel);
            for (int index = 0; index < rows.length; index++) {
                values[rows[index]] = found[index];
                present.set(rows[index]);
            }
            return new Sensor(channel, values, present);
        }

        Channel channel() {
            return channel;
        }

        OptionalDouble find(int row) {
            return present.get(row) ? OptionalDouble.of(values[row]) : OptionalDouble.empty();
        }
    }
}
