package org.nextpull.pull;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/**
 * Reads the delay of the lambda sensor off the throttle edges of a stretch: the shift at which lambda correlates best with the
 * throttle. Its error is half the range of shifts that fit as well but for the noise, what the two edges differ by,
 * and the part of the sensor's time constant that an edge does not show.
 */
record LambdaDelay(TimedChannel lambda, TimedChannel throttle) {
    static final Channel LAMBDA = Channel.of(Role.LAMBDA);

    private static final double LONGEST_S = 1.5;
    private static final double GRID_S = 0.02;
    /** Shifts that are passed over in a first look: an edge takes longer than that to come through. */
    private static final int COARSE = 4;

    private static final double BEFORE_S = 1.5;
    private static final double AFTER_S = 1.5;
    private static final double LEAST_EDGE = 0.3;
    private static final double LEAST_SQUARED_CORRELATION = 0.6;
    private static final double MOST_ERROR_S = 0.3;
    private static final int LEAST_ROWS = 12;

    /** What an edge shows too little of the lag of a usual sensor, whose time constant is about 0.1 s (common practice, no source). */
    private static final double BLUR_S = 0.07;

    /** Rows for each one that counts as independent. */
    private static final double ROWS_PER_FREE = 3;

    /** The delay; empty where lambda or the throttle is not logged, or lambda does not answer clearly. */
    static Optional<Candidate.LambdaAlignment.Estimated> of(FullLoadStretch stretch) {
        Samples samples = stretch.samples();
        TimedChannel lambda = TimedChannel.of(samples, LAMBDA);
        TimedChannel throttle = TimedChannel.of(samples, LoadGate.ThrottleGate.THROTTLE);
        if (lambda.size() < LEAST_ROWS || throttle.size() < LEAST_ROWS) {
            return Optional.empty();
        }
        LambdaDelay delay = new LambdaDelay(lambda, throttle);
        double on = samples.value(TimedChannel.TIME, stretch.core().first());
        double off = samples.value(TimedChannel.TIME, stretch.core().end() - 1);
        List<Candidate.LambdaAlignment.Estimated> edges =
                Stream.of(on, off).map(delay::atEdge).flatMap(Optional::stream).toList();
        return edges.stream()
                .min(Comparator.comparingDouble(Candidate.LambdaAlignment.Estimated::errorS))
                .map(best -> new Candidate.LambdaAlignment.Estimated(
                        best.appliedS(), Math.hypot(best.errorS(), beyondNoise(edges))));
    }

    /** The time constant, which an edge shows only in part, and how far opening and closing differ: neither is noise of one edge. */
    private static double beyondNoise(List<Candidate.LambdaAlignment.Estimated> edges) {
        double differ =
                edges.size() < 2 ? 0 : edges.get(0).appliedS() - edges.get(1).appliedS();
        return Math.hypot(BLUR_S, differ);
    }

    private Optional<Candidate.LambdaAlignment.Estimated> atEdge(double edge) {
        int first = lambda.firstFrom(edge - BEFORE_S);
        int end = first;
        while (end < lambda.size() && lambda.time(end) <= edge + AFTER_S + LONGEST_S) {
            end++;
        }
        if (first == end) {
            return Optional.empty();
        }
        RowRange rows = new RowRange(first, end);
        int last = (int) Math.round(LONGEST_S / GRID_S);
        Map<Integer, Fit> fits = new HashMap<>();
        IntFunction<Fit> at = shift -> fits.computeIfAbsent(shift, each -> fit(rows, each * GRID_S));
        int near = best(at, 0, last, COARSE);
        int best = best(at, Math.max(0, near - COARSE), Math.min(last, near + COARSE), 1);
        Fit fit = at.apply(Math.max(0, best));
        if (best < 0 || best == last || 1 - fit.unexplained() < LEAST_SQUARED_CORRELATION) {
            return Optional.empty();
        }
        double free = Math.max(2, fit.rows() / ROWS_PER_FREE);
        double limit = fit.unexplained() * (1 + 1 / free) + 1e-6;
        int low = best;
        while (low > 0 && at.apply(low - 1).unexplained() <= limit) {
            low--;
        }
        int high = best;
        while (high < last && at.apply(high + 1).unexplained() <= limit) {
            high++;
        }
        double row = end - first > 1 ? (lambda.time(end - 1) - lambda.time(first)) / (end - first - 1) : GRID_S;
        double error = Math.hypot((high - low) * GRID_S / 2, Math.max(row, GRID_S) / Math.sqrt(12));
        return error <= MOST_ERROR_S
                ? Optional.of(new Candidate.LambdaAlignment.Estimated(best * GRID_S, error))
                : Optional.empty();
    }

    /** The shift that leaves least open of every so many; -1 where none has rows enough. */
    private static int best(IntFunction<Fit> at, int first, int last, int step) {
        int best = -1;
        for (int shift = first; shift <= last; shift += step) {
            Fit fit = at.apply(shift);
            if (fit.rows() >= LEAST_ROWS
                    && (best < 0 || fit.unexplained() < at.apply(best).unexplained())) {
                best = shift;
            }
        }
        return best;
    }

    /** How much of lambda a throttle of so long before leaves open. */
    private record Fit(double unexplained, int rows) {}

    /** Sums are taken from the first values, which keeps them small. */
    private Fit fit(RowRange rows, double shift) {
        TimedChannel.Reading opening = throttle.at(lambda, rows, -shift);
        if (opening.size() < LEAST_ROWS) {
            return new Fit(1, 0);
        }
        double firstX = opening.values[0];
        double firstY = lambda.value(rows.first());
        double low = firstX;
        double high = firstX;
        double sumX = 0;
        double sumY = 0;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int index = 0; index < opening.size(); index++) {
            double open = opening.values[index];
            low = open < low ? open : low;
            high = open > high ? open : high;
            double x = open - firstX;
            double y = lambda.value(opening.indices[index]) - firstY;
            sumX += x;
            sumY += y;
            xx += x * x;
            xy += x * y;
            yy += y * y;
        }
        int count = opening.size();
        if (high - low < LEAST_EDGE) {
            return new Fit(1, 0);
        }
        xx -= sumX * sumX / count;
        xy -= sumX * sumY / count;
        yy -= sumY * sumY / count;
        return xx > 0 && yy > 0 ? new Fit(Math.max(0, 1 - xy * xy / (xx * yy)), count) : new Fit(1, 0);
    }
}
