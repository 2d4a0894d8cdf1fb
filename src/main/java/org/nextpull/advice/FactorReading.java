package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.nextpull.fit.Belief;
import org.nextpull.fit.PosteriorValue;
import org.nextpull.fit.ResponseCurve;
import org.nextpull.fit.RowCaps;
import org.nextpull.fit.SurfaceAim;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.plan.Goal;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/** What the surface says of one number of spark, and of the mixture: the peak, how sure that is, the curve through what was run. */
final class FactorReading {
    private static final double BRACKETED = 0.95;
    /**
     * Least advance near enough to the peak is known sooner than the peak itself: where that surely lies no further beyond what was run
     * than so many times the way from one to the other. In simulation its interval then held as often as it says.
     */
    private static final double GOOD_ENOUGH = 1.6;

    private static final double SURELY_BEYOND = 0.95;
    private static final double OUTLIER_WEIGHT = 0.4;
    private static final double FLAT_SHARE_PERCENT = 0.1;
    /** Printed intervals reach further on both sides by a share of the distance to near-best: the flatter a top, the further a parabola is off. */
    private static final double SHARE_OF_LEAST = 0.6;

    private static final double SHARE_OF_PEAK = 1;
    private static final double HUNDREDTHS = 100;
    /** Drift a pull that a second fit allows for, percent: what is printed holds on days that drift more than the fit takes for granted. */
    private static final Belief DRIFT = new Belief(0, 0.06);

    private final DayReadings day;
    private final DayEvidence evidence;
    private final PlannerDecision.Answer answer;
    private final Goal goal;
    private final SurfacePosterior posterior;
    private final Optional<Lambda> lambda;
    private final ResponseCurve curve;
    /** The same pulls where the day may drift more; worked out where it is first asked for. */
    private Optional<SurfacePosterior> drifting = Optional.empty();

    FactorReading(DayReadings day, DayEvidence evidence, PlannerDecision.Answer answer, Goal goal) {
        this.day = day;
        this.evidence = evidence;
        this.answer = answer;
        this.goal = goal;
        posterior = evidence.posterior();
        lambda = answer.least().lambda();
        curve = new ResponseCurve(
                posterior,
                day.stretches().stream()
                        .mapToDouble(stretch -> Reading.of(stretch, goal.response()).stream()
                                .mapToDouble(Reading::value)
                                .average()
                                .orElseThrow())
                        .toArray());
    }

    /**
     * The spark of an ignition that takes one number.
     *
     * @param exclusions what knock forbids
     */
    SweepAnswer timing(Exclusions exclusions) {
        double rpm = day.rows()[0];
        Optional<Span> clean = span(exclusions.cleanDeg(rpm));
        PosteriorValue best = posterior.flatDeg(lambda);
        double peakDeg = best.mean();
        double near = Math.sqrt(goal.nearBestPercent() / posterior.curvaturePercent());
        boolean isBracketed = isBracketed(best, clean, near * GOOD_ENOUGH);
        double cap = answer.caps().lowest();
        double least = Math.min(
                answer.least().spark().orElseThrow().degAt(rpm),
                clean.map(Span::high).orElse(Double.POSITIVE_INFINITY));
        ChosenBy by = answer.decidedBy().get(0);
        boolean isPeak = isBracketed && by == ChosenBy.PEAK;
        boolean isHeld = !isPeak
                && (by == ChosenBy.KNOCK_LIMIT || by == ChosenBy.PLAN_LIMIT)
                && (isBracketed || 1 - best.chanceBelow(cap) >= SURELY_BEYOND);
        DoubleFunction<ResponseCurve.At> at = curve.alongDeg(lambda);
        Optional<Span> run = span(evidence.pulls().stream()
                .mapToDouble(pull -> pull.spark().degAt(rpm))
                .toArray());
        SurfacePosterior drifting = isPeak ? drifting() : posterior;
        Optional<Optimum> optimum = run.filter(there -> isPeak).map(there -> {
            Span peak = hull(drifting, found -> found.flatDeg(lambda).ninety());
            double below = peakDeg - least;
            return new Optimum(
                    Math.min(peakDeg, there.high()),
                    within(wider(peak, SHARE_OF_PEAK * near), there),
                    isBracketed(best, clean, near),
                    least,
                    including(least, wider(Span.of(peak.low() - below, peak.high() - below), SHARE_OF_LEAST * near)),
                    OptionalDouble.of(at.apply(least).median()),
                    flat(new Around(peakDeg, posterior.curvaturePercent(), there), goal.nearBestPercent()));
        });
        List<AnswerRow> rows = isPeak && day.isOfRows()
                ? new RowReading(day, evidence, exclusions).flat(answer, goal, drifting)
                : List.of();
        double limit = exclusions.banDeg(rpm, lambda);
        return new SweepAnswer(
                Factor.TIMING,
                numbers(),
                isBracketed,
                optimum,
                isHeld
                        ? Optional.of(new SweepAnswer.Capped(
                                least, by, OptionalDouble.of(at.apply(least).median())))
                        : Optional.empty(),
                limit < Double.POSITIVE_INFINITY
                        ? OptionalDouble.of(SparkGrid.toHundredths(limit))
                        : OptionalDouble.empty(),
                Optional.empty(),
                new FittedCurve(run, at),
                rows.stream().flatMap(row -> stated(row).stream()).toList(),
                rows.stream()
                        .filter(row -> stated(row).isEmpty())
                        .map(row -> new SweepAnswer.OpenRow(row.rpm(), SweepAnswer.OpenRow.Why.NOT_BRACKETED))
                        .toList(),
                false,
                isPeak && day.isOfRows() ? gain() : Optional.empty(),
                outliers());
    }

    private static Optional<SweepAnswer.RowOptimum> stated(AnswerRow row) {
        return row.answer()
                .flatMap(best ->
                        best.interval().map(interval -> new SweepAnswer.RowOptimum(row.rpm(), best.deg(), interval)));
    }

    /** The mixture, as soon as its sweep gave torque. */
    SweepAnswer mixture() {
        PosteriorValue best = posterior.lambda().orElseThrow();
        double peakLambda = best.mean();
        double[] lambdas = evidence.pulls().stream()
                .filter(TriedPull::isClean)
                .flatMap(pull -> pull.lambda().stream())
                .mapToDouble(Lambda::value)
                .toArray();
        Optional<Span> clean = span(lambdas);
        double fall = posterior.mixtureFallPercent().orElseThrow() * HUNDREDTHS * HUNDREDTHS;
        double near = Math.sqrt(goal.nearBestPercent() / fall);
        boolean isBracketed = isBracketed(best, clean, Math.sqrt(FLAT_SHARE_PERCENT / fall));
        Optional<Span> run = span(day.used().stream()
                .flatMap(pull -> DayReadings.lambda(pull).stream())
                .mapToDouble(Lambda::value)
                .toArray());
        double left = answer.least().lambda().map(Lambda::value).orElse(peakLambda);
        DoubleFunction<ResponseCurve.At> at = curve.alongLambda();
        return new SweepAnswer(
                Factor.MIXTURE,
                numbers(),
                isBracketed,
                run.filter(there -> isBracketed).map(there -> {
                    Span peak = wider(
                            hull(
                                    drifting(),
                                    found -> found.lambda().orElseThrow().ninety()),
                            SHARE_OF_LEAST * near);
                    return new Optimum(
                            Math.min(peakLambda, there.high()),
                            within(peak, there),
                            true,
                            left,
                            including(left, peak),
                            OptionalDouble.of(at.apply(left).median()),
                            flat(new Around(peakLambda, fall, there), FLAT_SHARE_PERCENT));
                }),
                Optional.empty(),
                OptionalDouble.empty(),
                run.filter(there -> isBracketed)
                        .map(there -> flat(new Around(peakLambda, fall, there), goal.nearBestPercent())),
                new FittedCurve(run, at),
                List.of(),
                List.of(),
                false,
                Optional.empty(),
                outliers());
    }

    private List<Integer> numbers() {
        return day.used().stream().map(MeasuredPull::number).toList();
    }

    private List<Integer> outliers() {
        List<Integer> outliers = new ArrayList<>();
        List<List<MeasuredPull>> stretches = day.stretches();
        for (int i = 0; i < stretches.size(); i++) {
            if (stretches.size() > 2 && posterior.weightOf(i) < OUTLIER_WEIGHT) {
                stretches.get(i).forEach(pull -> outliers.add(pull.number()));
            }
        }
        return outliers;
    }

    /**
     * Whether clean settings lie on both sides of where the peak most likely is, and surely reach the settings that are near enough to it.
     */
    private static boolean isBracketed(PosteriorValue best, Optional<Span> clean, double near) {
        return clean.filter(run -> run.low() < best.mean() && best.mean() <= run.high() + near / 2)
                .filter(run -> best.chanceBelow(run.high() + near) >= BRACKETED)
                .isPresent();
    }

    private static Span wider(Span span, double by) {
        return Span.of(span.low() - by, span.high() + by);
    }

    private SurfacePosterior drifting() {
        SurfacePosterior found = drifting.orElseGet(() -> SurfacePosterior.of(
                posterior.surface().withPriors(posterior.surface().priors().withDrift(DRIFT))));
        drifting = Optional.of(found);
        return found;
    }

    private Span hull(SurfacePosterior drifting, Function<SurfacePosterior, Span> interval) {
        Span one = interval.apply(posterior);
        Span other = interval.apply(drifting);
        return Span.of(Math.min(one.low(), other.low()), Math.max(one.high(), other.high()));
    }

    private static Optional<Span> span(double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return values.length == 0 ? Optional.empty() : Optional.of(Span.of(low, high));
    }

    private static Span within(Span wanted, Span run) {
        double low = Math.min(run.high(), Math.max(run.low(), wanted.low()));
        return Span.of(low, Math.max(low, Math.min(run.high(), wanted.high())));
    }

    /** Rounding toward retard and rich must not carry what is stated out of its own interval. */
    private static Span including(double best, Span interval) {
        return Span.of(Math.min(best, interval.low()), Math.max(best, interval.high()));
    }

    /** A peak, how torque falls beside it in percent per unit squared, and what was run. */
    private record Around(double peak, double fall, Span run) {}

    /** Settings that lose no more than a share, never outside what was run. */
    private static Span flat(Around around, double percent) {
        double reach = Math.sqrt(percent / around.fall());
        return within(Span.of(around.peak() - reach, around.peak() + reach), around.run());
    }

    /** Percent that each speed at its own best would gain over the number that stays; empty where there is one speed. */
    Optional<MapState.Gain> gain() {
        if (day.rows().length < 2) {
            return Optional.empty();
        }
        double flat = day.ignition().isMap()
                ? posterior.flatDeg(lambda).mean()
                : answer.leave()
                        .or(() -> Optional.of(answer.least()))
                        .orElseThrow()
                        .spark()
                        .orElseThrow()
                        .degAt(day.rows()[0]);
        return Optional.of(new MapState.Gain(posterior.meanGainOfMap(flat), posterior.gainOfMap(flat)));
    }

    /** The least advance of each row that is near enough to its best, knock not looked at, degrees. */
    static double[] leastByRow(SurfacePosterior posterior, Optional<Lambda> lambda, double nearBestPercent) {
        RowCaps none = RowCaps.none(posterior.rows().size());
        return SurfaceAim.map(posterior, lambda, none).leastWithin(nearBestPercent);
    }
}
