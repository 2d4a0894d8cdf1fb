package org.nextpull.pull;

import java.util.Arrays;
import java.util.List;
import org.nextpull.channel.Samples;
import org.nextpull.math.MovingMedian;
import org.nextpull.math.Series;
import org.nextpull.math.WindowQuadratic;

/**
 * Speed over time of the full-load rows of a stretch: single impossible rows taken out, and a smooth speed and rate beside it from
 * local quadratics over half a second. Points are numbered from 0; each knows its row.
 */
final class SpeedTrace {
    private static final double HALF_WINDOW_S = 0.25;
    private static final int LEAST_ROWS = 5;
    private static final int MEDIAN_REACH = 3;
    private static final double SPIKE_RPM = 100;
    private static final double SPIKE_SHARE = 0.03;
    private static final double SPIKE_NOISES = 8;
    private static final double MAD_TO_DEVIATION = 1.4826;

    private final int[] rows;
    private final double[] time;
    private final double[] rpm;
    private final double[] smooth;
    private final double[] rate;
    private final int[] spikeRows;
    private final double noise;

    private SpeedTrace(int[] rows, double[] time, double[] rpm, int[] spikeRows, double noise) {
        this.rows = rows;
        this.time = time;
        this.rpm = rpm;
        this.spikeRows = spikeRows;
        this.noise = noise;
        this.smooth = new double[rows.length];
        this.rate = new double[rows.length];
        if (rows.length > 0) {
            WindowQuadratic fit = new WindowQuadratic(Series.of(time), Series.of(rpm));
            List<WindowQuadratic.Local> locals = fit.atEach(HALF_WINDOW_S, LEAST_ROWS);
            for (int point = 0; point < rows.length; point++) {
                smooth[point] = locals.get(point).value();
                rate[point] = locals.get(point).slope();
            }
        }
    }

    static SpeedTrace of(Samples samples, RowRange core, SpeedSource speed) {
        int[] rows = new int[core.rows()];
        double[] time = new double[core.rows()];
        double[] rpm = new double[core.rows()];
        Samples.Cells times = samples.cells(TimedChannel.TIME);
        Samples.Cells speeds = samples.cells(speed.channel());
        int count = 0;
        for (int row = core.first(); row < core.end(); row++) {
            if (speeds.isPresent(row)) {
                rows[count] = row;
                time[count] = times.value(row);
                rpm[count++] = speeds.value(row) * speed.rpmPerUnit();
            }
        }
        return cleaned(Arrays.copyOf(rows, count), Arrays.copyOf(time, count), Arrays.copyOf(rpm, count));
    }

    /** Takes the rows out that stand far off the median of their neighbours. Small steps, each of which the compiler is soon done with. */
    private static SpeedTrace cleaned(int[] rows, double[] time, double[] rpm) {
        double[] median = MovingMedian.of(rpm, MEDIAN_REACH);
        double noise = noise(rpm, median);
        int[] spikes = spikes(rpm, median, noise);
        if (spikes.length == 0) {
            return new SpeedTrace(rows, time, rpm, spikes, noise);
        }
        int[] keptRows = new int[rpm.length - spikes.length];
        double[] keptTime = new double[keptRows.length];
        double[] keptRpm = new double[keptRows.length];
        int spike = 0;
        for (int point = 0; point < rpm.length; point++) {
            if (spike < spikes.length && point == spikes[spike]) {
                spikes[spike++] = rows[point];
            } else {
                keptRows[point - spike] = rows[point];
                keptTime[point - spike] = time[point];
                keptRpm[point - spike] = rpm[point];
            }
        }
        return new SpeedTrace(keptRows, keptTime, keptRpm, spikes, noise);
    }

    private static double noise(double[] rpm, double[] median) {
        return rpm.length == 0
                ? 0
                : MAD_TO_DEVIATION
                        * Series.generate(rpm.length, point -> Math.abs(rpm[point] - median[point]))
                                .median();
    }

    /** The points that stand far off. */
    private static int[] spikes(double[] rpm, double[] median, double noise) {
        double least = Math.max(SPIKE_RPM, SPIKE_NOISES * noise);
        int[] spikes = new int[rpm.length];
        int count = 0;
        for (int point = 0; point < rpm.length; point++) {
            double off = Math.abs(rpm[point] - median[point]);
            if (off > least && off > SPIKE_SHARE * Math.abs(median[point])) {
                spikes[count++] = point;
            }
        }
        return Arrays.copyOf(spikes, count);
    }

    int size() {
        return rows.length;
    }

    int row(int point) {
        return rows[point];
    }

    double timeS(int point) {
        return time[point];
    }

    /** Speed as logged. */
    double rpm(int point) {
        return rpm[point];
    }

    double smoothRpm(int point) {
        return smooth[point];
    }

    /** Rate of the smooth speed, rpm/s. */
    double rate(int point) {
        return rate[point];
    }

    /** Rows whose speed is impossible. */
    int[] spikeRows() {
        return spikeRows.clone();
    }

    /** Standard deviation of single rows about their neighbours, rpm. */
    double noise() {
        return noise;
    }

    double durationS(int first, int last) {
        return time[last] - time[first];
    }

    /** Middle distance in time of neighbouring points, s; 0 for fewer than two. */
    double usualStepS(int first, int last) {
        return TimedChannel.usualStepS(point -> time[point], first, last);
    }

    /**
     * Points of a speed trace, both ends included.
     *
     * @param first first point
     * @param last last point, not before the first
     */
    record Points(int first, int last) {
        /**
         * Accepts a single point, which is first and last.
         *
         * @throws IllegalArgumentException when the first point is negative or the last lies before it
         */
        Points {
            if (first < 0 || last < first) {
                throw new IllegalArgumentException("not a span: " + first + " to " + last);
            }
        }

        double durationS(SpeedTrace trace) {
            return trace.durationS(first, last);
        }

        /** Change of the smooth speed from its first to its last point, rpm. */
        double rise(SpeedTrace trace) {
            return trace.smoothRpm(last) - trace.smoothRpm(first);
        }

        double meanRpm(SpeedTrace trace) {
            double sum = 0;
            for (int point = first; point <= last; point++) {
                sum += trace.rpm(point);
            }
            return sum / (last - first + 1);
        }
    }
}
