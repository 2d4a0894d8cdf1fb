package org.nextpull.pull;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Samples;

/** A channel over time where it is present; read between rows by straight lines, but not across holes. */
final class Timed {
    private static final double BRIDGE_S = 1;

    private final double[] time;
    private final double[] value;

    private Timed(double[] time, double[] value) {
        this.time = time;
        this.value = value;
    }

    static Timed of(Samples samples, Channel channel) {
        int[] rows = Arrays.stream(samples.presentRows(channel))
                .filter(row -> samples.isPresent(RowRef.TIME, row))
                .toArray();
        return new Timed(
                Arrays.stream(rows)
                        .mapToDouble(row -> samples.value(RowRef.TIME, row))
                        .toArray(),
                Arrays.stream(rows)
                        .mapToDouble(row -> samples.value(channel, row))
                        .toArray());
    }

    int size() {
        return time.length;
    }

    DoubleStream times() {
        return Arrays.stream(time);
    }

    Optional<Double> at(double when) {
        if (time.length == 0 || when < time[0] || when > time[time.length - 1]) {
            return Optional.empty();
        }
        int found = Arrays.binarySearch(time, when);
        if (found >= 0) {
            return Optional.of(value[found]);
        }
        int above = -found - 1;
        double width = time[above] - time[above - 1];
        if (width > BRIDGE_S) {
            return Optional.empty();
        }
        double share = (when - time[above - 1]) / width;
        return Optional.of(value[above - 1] + share * (value[above] - value[above - 1]));
    }
}
