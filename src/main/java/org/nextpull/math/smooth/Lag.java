package org.nextpull.math.smooth;

import java.util.Optional;
import org.nextpull.math.Series;

/**
 * How far one evenly sampled signal runs behind another.
 *
 * @param samples lag of the follower, in samples and parts of one
 * @param standardError of the lag, in samples, were the follower's noise white
 * @param correlation at the lag, sign included
 */
public record Lag(double samples, double standardError, double correlation) {

    /**
     * Seeks the lag from 0 to {@code most} samples at which the two correlate best, up or down, and refines it by the parabola
     * through the best three. Empty when the best is at the last lag tried or nothing correlates: then the lag was not found.
     *
     * @param leader the signal that goes first
     * @param follower of the same length
     * @param most largest lag, at least 1, leaving at least four samples in common
     */
    public static Optional<Lag> between(Series leader, Series follower, int most) {
        if (leader.size() != follower.size() || most < 1 || leader.size() - most < 4) {
            throw new IllegalArgumentException("signals of one length, at least four samples longer than the lag");
        }
        int best = 0;
        double peak = 0;
        // one step beyond both ends, so that the parabola has its neighbours
        double[] correlations = new double[most + 2];
        for (int lag = -1; lag <= most; lag++) {
            correlations[lag + 1] = correlation(leader, follower, lag);
            if (lag >= 0 && Math.abs(correlations[lag + 1]) > Math.abs(peak)) {
                best = lag;
                peak = correlations[lag + 1];
            }
        }
        if (best == most || peak == 0) {
            return Optional.empty();
        }
        double before = correlations[best];
        double after = correlations[best + 2];
        double bend = Math.abs(2 * peak - before - after);
        if (bend == 0) {
            return Optional.empty();
        }
        double shift = Math.signum(peak) * (after - before) / (2 * bend);
        double error = Math.sqrt(Math.max(0, 1 - peak * peak) / ((leader.size() - best) * Math.abs(peak) * bend));
        return Optional.of(new Lag(Math.max(0, best + Math.max(-0.5, Math.min(0.5, shift))), error, peak));
    }

    /** Pearson's correlation of the parts that overlap; 0 when one of them does not move. */
    private static double correlation(Series leader, Series follower, int lag) {
        int from = Math.max(0, -lag);
        int end = leader.size() - Math.max(0, lag);
        Series first = leader.slice(from, end);
        Series second = follower.slice(from + lag, end + lag);
        double squares = first.sumOfSquaredDeviations() * second.sumOfSquaredDeviations();
        if (!(squares > 0)) {
            return 0;
        }
        double firstMean = first.mean();
        double secondMean = second.mean();
        return first.combine(second, (left, right) -> (left - firstMean) * (right - secondMean))
                        .sum()
                / Math.sqrt(squares);
    }
}
