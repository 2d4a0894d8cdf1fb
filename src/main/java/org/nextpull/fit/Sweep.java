package org.nextpull.fit;

import java.util.List;
import org.nextpull.unit.Span;

/**
 * All that the fit of one sweep needs.
 *
 * @param points pulls that gave a response, at least one
 * @param priors what is believed beforehand
 * @param peakSpan settings at which the peak is looked for; wider than what may be pulled
 * @param permitted highest setting that may be left in the engine, and how near the best is good enough
 * @param level response that counts as 100 %
 */
public record Sweep(List<SweepPoint> points, SweepPriors priors, Span peakSpan, Permitted permitted, double level) {
    /** The peak is looked for this far below the lowest setting of the sweep ... */
    private static final double BELOW = 8;

    /** ... and this far above the highest permitted one. */
    private static final double ABOVE = 6;

    public Sweep {
        points = List.copyOf(points);
        if (points.isEmpty() || !(level > 0)) {
            throw new IllegalArgumentException(points.size() + " points at level " + level);
        }
    }

    /**
     * A sweep whose highest response counts as 100 %, so that the unit of the response and the order of the list do not matter.
     *
     * @param asked settings that the plan allows to be pulled
     */
    public static Sweep of(List<SweepPoint> points, SweepPriors priors, Span asked, Permitted permitted) {
        double lowest = asked.low();
        double highest = asked.high();
        double level = 0;
        for (SweepPoint point : points) {
            lowest = Math.min(lowest, point.setting());
            highest = Math.max(highest, point.setting());
            level = Math.max(level, point.response());
        }
        return new Sweep(points, priors, Span.of(lowest - BELOW, highest + ABOVE), permitted, level);
    }

    public Sweep withPoints(List<SweepPoint> newPoints) {
        return new Sweep(newPoints, priors, peakSpan, permitted, level);
    }

    public Sweep withPriors(SweepPriors newPriors) {
        return new Sweep(points, newPriors, peakSpan, permitted, level);
    }

    public Sweep withPermitted(Permitted newPermitted) {
        return new Sweep(points, priors, peakSpan, newPermitted, level);
    }

    /** Response of a point in percent of the level. */
    double percent(SweepPoint point) {
        return 100 * point.response() / level;
    }
}
