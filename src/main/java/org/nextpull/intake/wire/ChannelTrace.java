package org.nextpull.intake.wire;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;

/** The last values of one channel with their times, from which it is told what it was at the time of another source's row. */
final class ChannelTrace {
    /** Longest usual step between values that are interpolated; a slower channel is held, for nobody can wait for it. */
    static final double INTERPOLATED_STEP_S = 0.25;
    /** Longest hole that is interpolated over or held over, unless the channel is a slow one. */
    static final double LEAST_HOLE_S = 0.5;

    private static final double STEPS_IN_A_HOLE = 3;
    private static final double STEP_GAIN = 0.1;
    /** Values that change in steps, so that nothing lies between two of them. */
    private static final Set<Role> STEPPED =
            Set.of(Role.ADVANCE, Role.ADVANCE_OFFSET, Role.RUN, Role.ORDER, Role.USED, Role.KNOCK_LEVEL);

    private final Channel channel;
    private double[] times = new double[64];
    private double[] values = new double[64];
    private int count;
    private double stepS;
    private int steps;
    private double countedUntilS = Double.NEGATIVE_INFINITY;

    ChannelTrace(Channel channel) {
        this.channel = channel;
    }

    Channel channel() {
        return channel;
    }

    void add(double when, double value) {
        if (count > 0) {
            double step = when - times[count - 1];
            steps++;
            stepS += (step - stepS) * Math.max(STEP_GAIN, 1.0 / steps);
        }
        if (count == times.length) {
            times = Arrays.copyOf(times, 2 * count);
            values = Arrays.copyOf(values, 2 * count);
        }
        times[count] = when;
        values[count++] = value;
    }

    /** Forgets what is no longer needed for rows after a time. */
    void forgetBefore(double when) {
        int keep = Math.max(0, indexAtOrBefore(when));
        if (channel.role() == Role.KNOCK_EVENTS) {
            keep = Math.max(0, Math.min(keep, indexAtOrBefore(countedUntilS)));
        }
        if (keep > 0) {
            System.arraycopy(times, keep, times, 0, count - keep);
            System.arraycopy(values, keep, values, 0, count - keep);
            count -= keep;
        }
    }

    /**
     * Whether it is settled what the channel was at a time.
     *
     * @param knownUntilS no value before this time can come any more
     */
    boolean isSettled(double when, double knownUntilS) {
        if (knownUntilS > when && (!isInterpolated() || channel.role() == Role.KNOCK_EVENTS)) {
            return true;
        }
        int before = indexAtOrBefore(when);
        if ((before >= 0 && times[before] == when) || before + 1 < count) {
            return true;
        }
        return knownUntilS > (before < 0 ? when : times[before] + holeS());
    }

    /** The value at a time, once that is settled. */
    OptionalDouble at(double when) {
        if (channel.role() == Role.KNOCK_EVENTS) {
            return counted(when);
        }
        int before = indexAtOrBefore(when);
        if (before < 0) {
            return OptionalDouble.empty();
        }
        if (isInterpolated() && before + 1 < count && times[before + 1] - times[before] <= holeS()) {
            double share = (when - times[before]) / (times[before + 1] - times[before]);
            return OptionalDouble.of(values[before] + share * (values[before + 1] - values[before]));
        }
        return when - times[before] <= holeS() ? OptionalDouble.of(values[before]) : OptionalDouble.empty();
    }

    /** Events since the row before: each is counted in one row. */
    private OptionalDouble counted(double when) {
        int before = indexAtOrBefore(when);
        if (before < 0 || when - times[before] > holeS()) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (int index = before; index >= 0 && times[index] > countedUntilS; index--) {
            sum += values[index];
        }
        countedUntilS = when;
        return OptionalDouble.of(sum);
    }

    private boolean isInterpolated() {
        return !STEPPED.contains(channel.role()) && stepS <= INTERPOLATED_STEP_S;
    }

    private double holeS() {
        return Math.max(LEAST_HOLE_S, STEPS_IN_A_HOLE * stepS);
    }

    private int indexAtOrBefore(double when) {
        int at = Arrays.binarySearch(times, 0, count, when);
        return at >= 0 ? at : -at - 2;
    }
}
