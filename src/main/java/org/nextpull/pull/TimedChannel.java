package org.nextpull.pull;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/** A channel over time where it is present; read between rows by straight lines, but not across holes. */
final class TimedChannel {
    static final Channel TIME = Channel.of(Role.TIME);

    private static final double BRIDGE_S = 1;

    private final double[] time;
    private final double[] value;

    private TimedChannel(double[] time, double[] value) {
        this.time = time;
        this.value = value;
    }

    static TimedChannel of(Samples samples, Channel channel) {
        Samples.Cells times = samples.cells(TIME);
        Samples.Cells values = samples.cells(channel);
        double[] time = new double[samples.rows()];
        double[] value = new double[samples.rows()];
        int count = 0;
        for (int row = 0; row < samples.rows(); row++) {
            if (values.isPresent(row) && times.isPresent(row)) {
                time[count] = times.value(row);
                value[count++] = values.value(row);
            }
        }
        return new TimedChannel(Arrays.copyOf(time, count), Arrays.copyOf(value, count));
    }

    int size() {
        return time.length;
    }

    double time(int index) {
        return time[index];
    }

    double value(int index) {
        return value[index];
    }

    /** Index of the first value at or after a time; {@link #size} behind the last. */
    int firstFrom(double when) {
        int found = Arrays.binarySearch(time, when);
        return found >= 0 ? found : -found - 1;
    }

    /** The same for times that rise: that of the one before is where to look from. */
    int firstFrom(double when, int from) {
        int above = from;
        while (above < time.length && time[above] < when) {
            above++;
        }
        return above;
    }

    OptionalDouble at(double when) {
        int above = firstFrom(when);
        return isBetween(above, when) ? OptionalDouble.of(between(above, when)) : OptionalDouble.empty();
    }

    /** Whether there is a value at a time, {@code above} being the first index at or after it. */
    boolean isBetween(int above, double when) {
        return above < time.length && (time[above] == when || (above > 0 && time[above] - time[above - 1] <= BRIDGE_S));
    }

    /** The value at a time for which {@link #isBetween} holds. */
    double between(int above, double when) {
        if (time[above] == when) {
            return value[above];
        }
        double share = (when - time[above - 1]) / (time[above] - time[above - 1]);
        return value[above - 1] + share * (value[above] - value[above - 1]);
    }
}
