package org.nextpull.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nextpull.unit.Span;

/**
 * What the pulls of one sweep alone say of its curvature, for days to come. It is read off a posterior with a prior so open that it adds
 * next to nothing: what one day believed beforehand must not come back to the next day as if it had been measured.
 */
public final class CurvatureLesson {
    private static final double OPEN_SD = 1.5;
    private static final double LIKELY = 0.8;
    private static final int LEAST_SETTINGS = 4;
    /** The grid resolves no less than this, and a sweep that says less than the other teaches nothing. */
    private static final double LEAST_SD = 0.15;

    private static final double MOST_SD = 1;
    private static final double PEAK_STEP = 0.5;
    private static final double NARROWEST_FOCUS = 0.3;
    private static final double NEAR_BEST = 0.002;

    private CurvatureLesson() {}

    /**
     * The natural log of the curvature of a sweep; empty where its pulls do not bracket the peak or hardly tell how sharp it is.
     *
     * @param points pulls that gave a response
     * @param usual what is believed of engines in general
     */
    public static Optional<Belief> of(List<SweepPoint> points, SweepPriors usual) {
        if (points.stream().mapToDouble(SweepPoint::setting).distinct().count() < LEAST_SETTINGS) {
            return Optional.empty();
        }
        double best = points.stream()
                .max(Comparator.comparingDouble(SweepPoint::response))
                .orElseThrow()
                .setting();
        double highest = points.stream().mapToDouble(SweepPoint::setting).max().orElseThrow();
        double lowest = points.stream().mapToDouble(SweepPoint::setting).min().orElseThrow();
        SweepPriors open = usual.withPeak(new Belief(best, usual.peak().sd()))
                .withLnCurvature(new Belief(usual.curvature().asNormal().centre(), OPEN_SD));
        Sweep sweep = Sweep.of(points, open, Span.of(lowest, highest), new Permitted(highest, NEAR_BEST));
        Belief rough = SweepPosterior.of(sweep).lnCurvature();
        SweepPosterior posterior = SweepPosterior.of(sweep, GridNodes.around(open, focus(sweep, rough)));
        if (posterior.probabilityPeakBelow(highest) < LIKELY || posterior.probabilityPeakBelow(lowest) > 1 - LIKELY) {
            return Optional.empty();
        }
        Belief curvature = posterior.lnCurvature();
        double sd = Math.hypot(curvature.sd(), LEAST_SD);
        return sd > MOST_SD ? Optional.empty() : Optional.of(new Belief(curvature.centre(), sd));
    }

    /** An open prior has few nodes for the curvature where it matters: so they are set again, about what the first look found. */
    private static GridNodes.Focus focus(Sweep sweep, Belief rough) {
        double sd = Math.min(OPEN_SD, Math.max(NARROWEST_FOCUS, 2 * rough.sd()));
        return new GridNodes.Focus(sweep.peakSpan(), PEAK_STEP, new Belief(rough.centre(), sd));
    }
}
