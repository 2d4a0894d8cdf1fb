package org.nextpull.advice;

import java.util.function.Function;
import org.nextpull.fit.Belief;
import org.nextpull.fit.SweepPosterior;
import org.nextpull.fit.SweepPriors;
import org.nextpull.unit.Span;

/**
 * The 90 % intervals that are printed: those of the fit, made wider by what the fit takes for granted. It takes the day to drift little
 * and the top to be a parabola with some lean; where the top is flat or the day drifts by 0.15 % a pull, its own intervals held in 37
 * to 65 % of sweeps. So they also hold what a fit finds that lets the day drift three times as much, and reach further on both sides by
 * a share of the distance from the peak to where the response is near-best, for the flatter the top, the further a parabola may be off.
 */
final class PrintedInterval {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    /** Drift a pull that the second fit allows for, percent of the level, one standard deviation. */
    private static final Belief DRIFT = new Belief(0, 0.06);

    /** Share of that distance for the least good setting; in the class that is worst (a quartic top) 0.4 held in 89 %, 0.6 in 95 %. */
    private static final double SHARE_OF_LEAST = 0.6;

    /** Share of that distance for the peak, which a flat top leaves further open; 0.6 held in 84 %, 1 in 89 %. */
    private static final double SHARE_OF_PEAK = 1;

    private final SweepPosterior posterior;
    private final SweepPosterior drifting;
    private final double nearBestDistance;

    private PrintedInterval(SweepPosterior posterior, SweepPosterior drifting) {
        this.posterior = posterior;
        this.drifting = drifting;
        this.nearBestDistance = Math.sqrt(
                posterior.sweep().permitted().nearBest() / posterior.curvature().centre());
    }

    static PrintedInterval of(SweepPosterior posterior) {
        SweepPriors priors = posterior.sweep().priors();
        return new PrintedInterval(
                posterior, SweepPosterior.of(posterior.sweep().withPriors(priors.withDrift(DRIFT))));
    }

    SweepPosterior posterior() {
        return posterior;
    }

    /** Interval of the peak, within the settings that were run: it is printed only where they bracket it. */
    Span peak(Span run) {
        Span wide = hull(found -> quantiles(found::peakQuantile), SHARE_OF_PEAK);
        return Span.of(Math.max(run.low(), wide.low()), Math.max(run.low(), Math.min(run.high(), wide.high())));
    }

    /**
     * Interval of the least setting that is as good as the best permitted one.
     *
     * @param least the interval that one posterior gives
     */
    Span least(Function<SweepPosterior, Span> least) {
        return hull(least, SHARE_OF_LEAST);
    }

    /** The same with the usual quantiles. */
    static Span leastOf(SweepPosterior posterior) {
        return quantiles(posterior::leastQuantile);
    }

    /** How much further than by the fit alone such an interval reaches, to either side. */
    Span widening() {
        Span own = leastOf(posterior);
        Span wide = least(PrintedInterval::leastOf);
        return Span.of(-(own.low() - wide.low()), wide.high() - own.high());
    }

    private Span hull(Function<SweepPosterior, Span> interval, double share) {
        Span one = interval.apply(posterior);
        Span other = interval.apply(drifting);
        double more = share * nearBestDistance;
        return Span.of(Math.min(one.low(), other.low()) - more, Math.max(one.high(), other.high()) + more);
    }

    private static Span quantiles(Function<Double, Double> at) {
        return Span.of(at.apply(LOW), at.apply(HIGH));
    }
}
