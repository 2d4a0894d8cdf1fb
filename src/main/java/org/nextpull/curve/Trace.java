package org.nextpull.curve;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.math.MovingMedian;
import org.nextpull.math.Series;
import org.nextpull.math.WindowQuadratic;
import org.nextpull.pull.SpeedSource;

/**
 * One channel over time, only where it is present.
 *
 * @param timeS times, never falling
 * @param value values
 */
record Trace(Series timeS, Series value) {
    private static final Channel TIME = Channel.of(Role.TIME);

    /** Longest hole that is bridged when a value is read between two rows, s. */
    private static final double BRIDGE_S = 0.5;

    /** Beyond this a reading is a sensor's fault whatever its unit, and its square might overflow. */
    private static final double IMPOSSIBLE = 1e9;

    /** Window of the slope of a speed, s. */
    private static final double SLOPE_WINDOW_S = 0.3;

    private static final int LEAST_SLOPE_ROWS = 5;

    private static final int SPIKE_REACH = 3;
    private static final double SPIKE_SHARE = 0.1;
    private static final double SPIKE_TIMES = 8;
    private static final double MAD_TO_DEVIATION = 1.4826;

    static Optional<Trace> of(Samples samples, Channel channel, double factor) {
        double[] time = new double[samples.rows()];
        double[] value = new double[samples.rows()];
        Samples.Cells times = samples.cells(TIME);
        Samples.Cells cells = samples.cells(channel);
        int count = 0;
        for (int row = 0; row < samples.rows(); row++) {
            boolean possible = cells.isPresent(row) && Math.abs(cells.value(row) * factor) < IMPOSSIBLE;
            if (possible && times.isPresent(row) && (count == 0 || times.value(row) >= time[count - 1])) {
                time[count] = times.value(row);
                value[count++] = cells.value(row) * factor;
            }
        }
        return count == 0
                ? Optional.empty()
                : Optional.of(new Trace(Series.copyOf(time, 0, count), Series.copyOf(value, 0, count)));
    }

    static Optional<Trace> of(Samples samples, SpeedSource source) {
        return of(samples, source.channel(), source.rpmPerUnit());
    }

    /** Without the rows that stand far off the median of the seven around them: by a tenth of it, and by eight times the usual. */
    Trace withoutSpikes() {
        double[] off = new double[size()];
        double[] middle = MovingMedian.of(value.toArray(), SPIKE_REACH);
        for (int row = 0; row < size(); row++) {
            off[row] = Math.abs(value.get(row) - middle[row]);
        }
        double usual = MAD_TO_DEVIATION * Series.of(off).median();
        int[] kept = IntStream.range(0, size())
                .filter(row -> off[row] <= Math.max(SPIKE_SHARE * Math.abs(middle[row]), SPIKE_TIMES * usual))
                .toArray();
        return kept.length == size() ? this : new Trace(timeS.pick(IntStream.of(kept)), value.pick(IntStream.of(kept)));
    }

    int size() {
        return timeS.size();
    }

    /** The value at a time, read between its neighbours; empty beyond the ends and inside long holes. */
    OptionalDouble at(double time) {
        int low = 0;
        int high = timeS.size() - 1;
        if (time < timeS.get(low) || time > timeS.get(high)) {
            return OptionalDouble.empty();
        }
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (timeS.get(middle) <= time) {
                low = middle;
            } else {
                high = middle;
            }
        }
        if (timeS.get(low) == time) {
            return OptionalDouble.of(value.get(low));
        }
        if (timeS.get(high) == time) {
            return OptionalDouble.of(value.get(high));
        }
        double width = timeS.get(high) - timeS.get(low);
        if (width > BRIDGE_S) {
            return OptionalDouble.empty();
        }
        double share = (time - timeS.get(low)) / width;
        return OptionalDouble.of(value.get(low) + share * (value.get(high) - value.get(low)));
    }

    /** Where rows on both sides tell a slope: at its ends a trace only foretells it, and a torque made of that seems to rise or fall there. */
    Trace withSlopes() {
        double first = timeS.get(0) + SLOPE_WINDOW_S / 2;
        double last = timeS.get(timeS.size() - 1) - SLOPE_WINDOW_S / 2;
        int[] inside = IntStream.range(0, timeS.size())
                .filter(row -> timeS.get(row) >= first && timeS.get(row) <= last)
                .toArray();
        return inside.length < LEAST_SLOPE_ROWS
                ? this
                : new Trace(
                        Series.generate(inside.length, row -> timeS.get(inside[row])),
                        Series.generate(inside.length, row -> value.get(inside[row])));
    }

    /** Slopes at those times, in units a second, from local quadratics over about 0.3 s. */
    Series slopesAt(Series places) {
        WindowQuadratic fit = new WindowQuadratic(timeS, value);
        return places.map(
                time -> fit.at(time, SLOPE_WINDOW_S / 2, LEAST_SLOPE_ROWS).slope());
    }
}
