package org.nextpull.pull;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.math.Series;

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

    /** Middle distance in time of the rows or points from a first to a last one, s; 0 for fewer than two. */
    static double usualStepS(IntToDoubleFunction timeS, int first, int last) {
        return last <= first
                ? 0
                : Series.generate(
                                last - first,
                                step -> timeS.applyAsDouble(first + step + 1) - timeS.applyAsDouble(first + step))
                        .median();
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

    /** The values of {@link #at}, in order, and the index of the time of each. */
    static final class Reading {
        final int[] indices;
        final double[] values;
        private int size;

        private Reading(int most) {
            this.indices = new int[most];
            this.values = new double[most];
        }

        int size() {
            return size;
        }

        private void add(int index, double read) {
            indices[size] = index;
            values[size++] = read;
        }
    }

    /**
     * The channel at times, those left out at which it has no value.
     *
     * @param times times of another channel, or of this one
     * @param range which of them
     * @param laterS what is added to each, s
     */
    Reading at(TimedChannel times, RowRange range, double laterS) {
        Reading reading = new Reading(range.rows());
        int above = range.rows() == 0 ? 0 : firstFrom(times.time[range.first()] + laterS);
        for (int index = range.first(); index < range.end(); index++) {
            double when = times.time[index] + laterS;
            while (above < time.length && time[above] < when) {
                above++;
            }
            if (above == time.length) {
                break;
            }
            if (time[above] == when) {
                reading.add(index, value[above]);
            } else if (above > 0 && time[above] - time[above - 1] <= BRIDGE_S) {
                double share = (when - time[above - 1]) / (time[above] - time[above - 1]);
                reading.add(index, value[above - 1] + share * (value[above] - value[above - 1]));
            }
        }
        return reading;
    }
}
