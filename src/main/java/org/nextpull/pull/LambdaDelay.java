package org.nextpull.pull;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.math.Series;

/**
 * Reads the delay of the lambda sensor off the throttle edges of a stretch: the shift at which lambda correlates best with the
 * throttle. Its error is half the range of shifts that fit as well but for the noise.
 */
final class LambdaDelay {
    static final Channel LAMBDA = Channel.of(Role.LAMBDA);

    private static final double LONGEST_S = 1.5;
    private static final double GRID_S = 0.02;
    private static final double BEFORE_S = 1.5;
    private static final double AFTER_S = 1.5;
    private static final double LEAST_EDGE = 0.3;
    private static final double LEAST_SQUARED_CORRELATION = 0.6;
    private static final double MOST_ERROR_S = 0.3;
    private static final int LEAST_ROWS = 12;

    /** Rows for each one that counts as independent. */
    private static final double ROWS_PER_FREE = 3;

    private final Timed lambda;
    private final Timed throttle;

    private LambdaDelay(Timed lambda, Timed throttle) {
        this.lambda = lambda;
        this.throttle = throttle;
    }

    /** The delay; empty where lambda or the throttle is not logged, or lambda does not answer clearly. */
    static Optional<LambdaAlignment.Estimated> of(Stretch stretch) {
        Samples samples = stretch.samples();
        Timed lambda = Timed.of(samples, LAMBDA);
        Timed throttle = Timed.of(samples, ThrottleGate.THROTTLE);
        if (lambda.size() < LEAST_ROWS || throttle.size() < LEAST_ROWS) {
            return Optional.empty();
        }
        LambdaDelay delay = new LambdaDelay(lambda, throttle);
        double on = samples.value(RowRef.TIME, stretch.core().first());
        double off = samples.value(RowRef.TIME, stretch.core().end() - 1);
        return Stream.of(on, off)
                .map(delay::atEdge)
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(LambdaAlignment.Estimated::errorS));
    }

    private Optional<LambdaAlignment.Estimated> atEdge(double edge) {
        Series times =
                Series.of(lambda.times().filter(time -> time >= edge - BEFORE_S && time <= edge + AFTER_S + LONGEST_S));
        int shifts = (int) Math.round(LONGEST_S / GRID_S) + 1;
        double[] unexplained = new double[shifts];
        int best = -1;
        int bestRows = 0;
        for (int shift = 0; shift < shifts; shift++) {
            Fit fit = fit(times, shift * GRID_S);
            unexplained[shift] = fit.unexplained();
            if (fit.rows() >= LEAST_ROWS && (best < 0 || unexplained[shift] < unexplained[best])) {
                best = shift;
                bestRows = fit.rows();
            }
        }
        if (best < 0 || best == shifts - 1 || 1 - unexplained[best] < LEAST_SQUARED_CORRELATION) {
            return Optional.empty();
        }
        double free = Math.max(2, bestRows / ROWS_PER_FREE);
        double limit = unexplained[best] * (1 + 1 / free) + 1e-6;
        int low = best;
        while (low > 0 && unexplained[low - 1] <= limit) {
            low--;
        }
        int high = best;
        while (high < shifts - 1 && unexplained[high + 1] <= limit) {
            high++;
        }
        double row = times.size() > 1 ? (times.last() - times.first()) / (times.size() - 1) : GRID_S;
        double error = Math.hypot((high - low) * GRID_S / 2, Math.max(row, GRID_S) / Math.sqrt(12));
        return error <= MOST_ERROR_S
                ? Optional.of(new LambdaAlignment.Estimated(best * GRID_S, error))
                : Optional.empty();
    }

    /** How much of lambda a throttle of so long before leaves open. */
    private record Fit(double unexplained, int rows) {}

    private Fit fit(Series times, double shift) {
        double[] x = new double[times.size()];
        double[] y = new double[times.size()];
        int count = 0;
        for (int row = 0; row < times.size(); row++) {
            Optional<Double> then = throttle.at(times.get(row) - shift);
            if (then.isPresent()) {
                x[count] = then.get();
                y[count++] = lambda.at(times.get(row)).orElseThrow();
            }
        }
        x = Arrays.copyOf(x, count);
        y = Arrays.copyOf(y, count);
        if (count < LEAST_ROWS || range(x) < LEAST_EDGE) {
            return new Fit(1, 0);
        }
        double meanX = Series.of(x).mean();
        double meanY = Series.of(y).mean();
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int row = 0; row < count; row++) {
            xx += (x[row] - meanX) * (x[row] - meanX);
            xy += (x[row] - meanX) * (y[row] - meanY);
            yy += (y[row] - meanY) * (y[row] - meanY);
        }
        return xx > 0 && yy > 0 ? new Fit(Math.max(0, 1 - xy * xy / (xx * yy)), count) : new Fit(1, 0);
    }

    private static double range(double[] values) {
        double low = Arrays.stream(values).min().orElse(0);
        return Arrays.stream(values).max().orElse(0) - low;
    }
}
