package org.nextpull.intake.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;

/** When the lines of a make-up arrived, and from that and what the logger writes the time at which each was measured. */
final class LineTimes {
    private static final double LEAST_STEP_S = 1e-6;
    private static final Channel TIME = Channel.of(Role.TIME);

    private final double delayS;
    private final LoggerClock clock = new LoggerClock();
    private long[] lines = new long[64];
    private double[] arrivals = new double[64];
    private int waiting;
    private double lastS = Double.NEGATIVE_INFINITY;

    LineTimes(double delayS) {
        this.delayS = delayS;
    }

    void remember(long number, double arrivedS) {
        if (waiting == lines.length) {
            lines = Arrays.copyOf(lines, 2 * waiting);
            arrivals = Arrays.copyOf(arrivals, 2 * waiting);
        }
        lines[waiting] = number;
        arrivals[waiting++] = arrivedS;
    }

    /** Forgets the lines remembered so far. */
    void forget() {
        waiting = 0;
    }

    /** The rows that were read of the lines remembered, with the time at which they were measured in front; forgets those lines. */
    Samples timed(Samples written) {
        int count = waiting;
        waiting = 0;
        List<Channel> channels = new ArrayList<>(written.channels());
        channels.remove(TIME);
        channels.add(0, TIME);
        SamplesBuilder result = Samples.builder(channels);
        int at = 0;
        for (int row = 0; row < written.rows(); row++) {
            while (at < count - 1 && lines[at] < written.line(row)) {
                at++;
            }
            result.appendRow(written, row);
            result.set(0, measured(written.find(TIME, row), arrivals[at]));
        }
        return result.build();
    }

    private double measured(OptionalDouble writtenS, double arrivedS) {
        double session = writtenS.isPresent() ? clock.session(writtenS.getAsDouble(), arrivedS) : arrivedS;
        lastS = Math.max(session - delayS, lastS + LEAST_STEP_S);
        return lastS;
    }

    /**
     * Ties the time that a logger writes into its lines to the time of the session. Arrivals jitter by the milliseconds that a driver holds
     * bytes back, which would spoil the slope of the speed; the logger's own time does not. So the difference of the two clocks is smoothed
     * over {@link #SMOOTHED_OVER_S}, which follows any drift of a quartz, and taken anew where it leaps: the logger was started again.
     */
    private static final class LoggerClock {
        static final double SMOOTHED_OVER_S = 10;
        static final double LEAP_S = 1;

        private boolean started;
        private double difference;
        private double lastWritten;
        private double sinceStart;

        /**
         * The time of a line in the session.
         *
         * @param writtenS time that the logger gives, in s
         * @param arrivedS time of its arrival, in s since the session began
         */
        double session(double writtenS, double arrivedS) {
            double measured = arrivedS - writtenS;
            if (!started || Math.abs(measured - difference) > LEAP_S) {
                started = true;
                difference = measured;
                sinceStart = 0;
            } else {
                double step = Math.max(0, writtenS - lastWritten);
                sinceStart += step;
                double over = Math.min(SMOOTHED_OVER_S, sinceStart + step);
                double gain = over > 0 ? Math.min(1, step / over) : 0;
                difference += gain * (measured - difference);
            }
            lastWritten = writtenS;
            return writtenS + difference;
        }
    }
}
