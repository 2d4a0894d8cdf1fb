package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.fit.FittedCurve;
import org.nextpull.fit.Permitted;
import org.nextpull.fit.SettingLoss;
import org.nextpull.fit.SweepPoint;
import org.nextpull.fit.SweepPosterior;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.unit.Span;

/** Reads what a sweep says off its posterior and its planner's decision, in the factor's own unit. */
final class SweepReading {
    private static final double NOTHING = 1e-9;
    private static final double BRACKETED = 0.95;
    private static final double SURELY_BEYOND = 0.95;
    private static final double LIKELY_BEYOND = 0.5;
    private static final double OUTLIER_WEIGHT = 0.4;
    private static final double FLAT_SHARE = 0.001;
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;
    private static final int CURVE_POINTS = 81;

    private final Day day;
    private final SweepJudge.Question question;
    private final FittedJudge.Scale scale;
    private final Axis axis;

    SweepReading(Day day, SweepJudge.Question question, FittedJudge.Scale scale) {
        this.day = day;
        this.question = question;
        this.scale = scale;
        this.axis = question.axis();
    }

    SweepState state(SweepQuestion asked, SweepPlanner.Judged judged) {
        SweepDecision decision = judged.decision();
        SweepDecision.Numbers numbers = decision.numbers();
        SweepPosterior posterior = judged.posterior();
        double daring = asked.mostDaring().orElse(asked.room().start());
        double best = best(
                posterior,
                scale.fromPlanner(numbers.leave().map(SettingLoss::setting).orElse(daring)));
        Evidence evidence = new Evidence(
                numbers.pulls(),
                scale.fromPlanner(daring),
                scale.fromPlanner(numbers.peak()),
                numbers.chances().bracketed(),
                stake(numbers.leave().orElse(numbers.wanted()), isBracketed(posterior, asked, numbers)),
                lastStep(),
                numbers.scatterPercent());
        return new SweepState(
                answer(asked, numbers, posterior, best),
                posterior.peak(),
                evidence,
                step(decision, best, scale.fromPlanner(daring)),
                isBracketed(posterior, asked, numbers)
                        ? RefereeFindings.of(posterior, numbers.peak(), scale.perUnit())
                        : List.of());
    }

    private static Evidence.Stake stake(SettingLoss loss, boolean bracketed) {
        return new Evidence.Stake(
                100 * loss.loss(),
                bracketed ? OptionalDouble.of(100 * loss.belowPeak()) : OptionalDouble.empty(),
                loss.probabilityOfBad());
    }

    /** The setting to leave: not beyond what was run clean, and a mixture not leaner than the peak. */
    private double best(SweepPosterior posterior, double wanted) {
        double proven = Math.min(wanted, question.mostDaring());
        return axis.round(
                axis.factor() == Factor.TIMING
                        ? proven
                        : Math.min(proven, scale.fromPlanner(posterior.peakQuantile(0.5))));
    }

    private SweepStep step(SweepDecision decision, double best, double daring) {
        if (decision instanceof SweepDecision.Stop stop) {
            return new SweepStep.End(
                    best,
                    switch (stop.why()) {
                        case SETTLED -> AdviceCode.SETTLED;
                        case SCATTER_LIMITED -> AdviceCode.SCATTER_LIMITED;
                        case KNOCK_LIMITED -> AdviceCode.KNOCK_LIMITED;
                        case PLAN_LIMIT -> AdviceCode.PLAN_LIMIT;
                        case BUDGET -> AdviceCode.BUDGET;
                        case NO_ROOM ->
                            question.ceiling() < axis.allowed().high() - 1e-9
                                    ? AdviceCode.KNOCK_LIMITED
                                    : AdviceCode.PLAN_LIMIT;
                    });
        }
        SweepDecision.Pull pull = (SweepDecision.Pull) decision;
        double wanted = scale.fromPlanner(pull.candidate().setting());
        double setting =
                Math.min(axis.round(wanted), axis.round(question.reach().high()));
        SweepStep.Purpose why = pull.doubtful().isPresent() && pull.repeat()
                ? SweepStep.Purpose.DOUBT
                : pull.repeat()
                        ? SweepStep.Purpose.REPEAT
                        : setting > daring + axis.sameSetting()
                                        && decision.numbers().chances().bracketed() < 0.5
                                ? SweepStep.Purpose.CLIMB
                                : SweepStep.Purpose.BRACKET;
        return new SweepStep.Pull(best, setting, why);
    }

    private SweepAnswer answer(
            SweepQuestion asked, SweepDecision.Numbers numbers, SweepPosterior posterior, double best) {
        boolean bracketed = isBracketed(posterior, asked, numbers);
        boolean limited = numbers.chances().limited() >= SURELY_BEYOND;
        FittedCurve curve = new FittedCurve(posterior);
        List<FittedCurve.At> drawn = distinct(asked) > 1 ? curve.over(run(asked), CURVE_POINTS) : List.of();
        boolean peakDecides = bracketed && numbers.chances().limited() <= LIKELY_BEYOND;
        Optional<PrintedInterval> printed = peakDecides ? Optional.of(PrintedInterval.of(posterior)) : Optional.empty();
        Optional<Optimum> optimum = printed.filter(interval -> !isForbidden(best))
                .map(interval -> optimum(interval, curve, best, run(asked)));
        Optional<Capped> capped = (bracketed || limited) && !peakDecides && !isForbidden(best)
                ? Optional.of(capped(curve, best))
                : Optional.empty();
        RowAnswers rowAnswers = new RowAnswers(
                question,
                question.pulls().stream()
                        .filter(pull -> pull.isClean() || day.lifted().contains(pull.number()))
                        .toList());
        boolean byRow = printed.isPresent() && axis.factor() == Factor.TIMING;
        List<RowOptimum> rows = byRow
                ? rowAnswers.rows(
                        posterior, scale.fromPlanner(printed.orElseThrow().widening()))
                : List.of();
        return new SweepAnswer(
                axis.factor(),
                question.pulls().stream().map(MeasuredPull::number).toList(),
                bracketed,
                optimum,
                capped,
                limit(),
                bracketed && axis.factor() == Factor.MIXTURE ? edges(posterior, curve, run(asked)) : Optional.empty(),
                drawn.stream()
                        .map(at -> new FitPoint(scale.fromPlanner(at.setting()), at.median(), at.interval()))
                        .toList(),
                rows,
                byRow ? rowAnswers.open(posterior) : List.of(),
                axis.factor() == Factor.TIMING && rowAnswers.areProven(rows),
                outliers(posterior));
    }

    private Capped capped(FittedCurve curve, double best) {
        boolean byKnock = question.ceiling() < axis.allowed().high() - NOTHING;
        return new Capped(
                best,
                byKnock ? ChosenBy.KNOCK_LIMIT : ChosenBy.PLAN_LIMIT,
                OptionalDouble.of(curve.at(scale.toPlanner(best)).median()));
    }

    private static boolean isBracketed(SweepPosterior posterior, SweepQuestion asked, SweepDecision.Numbers numbers) {
        return numbers.chances().bracketed() >= BRACKETED && hasBothSides(posterior, asked);
    }

    private OptionalDouble limit() {
        double margin = day.plan().limits().knockMarginDeg();
        return axis.factor() == Factor.MIXTURE
                ? OptionalDouble.empty()
                : question.knockAt().stream()
                        .mapToDouble(heard -> heard - margin)
                        .min();
    }

    /** Where knock forbids all that the plan allows there is no best setting. */
    private boolean isForbidden(double best) {
        OptionalDouble limit = limit();
        return limit.isPresent() && best >= limit.getAsDouble() - NOTHING;
    }

    private static boolean hasBothSides(SweepPosterior posterior, SweepQuestion asked) {
        double median = posterior.peakQuantile(0.5);
        boolean below = asked.tried().stream().anyMatch(pull -> pull.clean() && pull.setting() < median);
        boolean above = asked.tried().stream().anyMatch(pull -> pull.clean() && pull.setting() > median);
        return below && above;
    }

    private static long distinct(SweepQuestion asked) {
        return asked.tried().stream()
                .mapToDouble(TriedSetting::setting)
                .distinct()
                .count();
    }

    private static Span run(SweepQuestion asked) {
        double low =
                asked.tried().stream().mapToDouble(TriedSetting::setting).min().orElse(0);
        double high =
                asked.tried().stream().mapToDouble(TriedSetting::setting).max().orElse(0);
        return Span.of(low, high);
    }

    private Optimum optimum(PrintedInterval printed, FittedCurve curve, double best, Span run) {
        SweepPosterior posterior = printed.posterior();
        double median = Math.max(run.low(), Math.min(run.high(), posterior.peakQuantile(0.5)));
        double share =
                axis.factor() == Factor.MIXTURE ? FLAT_SHARE : day.plan().goal().nearBestPercent() / 100;
        return new Optimum(
                scale.fromPlanner(median),
                scale.fromPlanner(printed.peak(run)),
                best,
                including(best, scale.fromPlanner(printed.least(this::bestInterval))),
                OptionalDouble.of(curve.at(scale.toPlanner(best)).median()),
                scale.fromPlanner(flat(curve, new Within(run, share))));
    }

    /** Rounding toward retard and rich must not carry what is stated out of its own interval. */
    private static Span including(double best, Span interval) {
        return Span.of(Math.min(best, interval.low()), Math.max(best, interval.high()));
    }

    /**
     * Interval of the best setting. With knock it reaches from the case that nothing beyond the most daring clean setting is permitted
     * to the case that all below the lowest knock is.
     */
    private Span bestInterval(SweepPosterior posterior) {
        OptionalDouble heard = question.knockAt().stream()
                .mapToDouble(Double::doubleValue)
                .filter(knock -> knock > question.mostDaring())
                .min();
        if (heard.isEmpty() || axis.factor() == Factor.MIXTURE) {
            return PrintedInterval.leastOf(posterior);
        }
        Permitted permitted = posterior.sweep().permitted();
        double low = posterior
                .permitting(permitted.withHighest(question.mostDaring()))
                .leastQuantile(LOW);
        double high =
                posterior.permitting(permitted.withHighest(heard.getAsDouble())).leastQuantile(HIGH);
        return Span.of(Math.min(low, high), high);
    }

    private Optional<Span> edges(SweepPosterior posterior, FittedCurve curve, Span run) {
        Within within = new Within(run, day.plan().goal().nearBestPercent() / 100);
        return posterior.peakQuantile(0.5) < run.low()
                ? Optional.empty()
                : Optional.of(scale.fromPlanner(flat(curve, within)));
    }

    /** A stretch of settings that were run, and the share of the best that may be given away in it. */
    private record Within(Span run, double share) {}

    /** Settings whose expected loss stays within a share of the best of the stretch, never outside what was run. */
    private static Span flat(FittedCurve curve, Within within) {
        List<FittedCurve.At> points = curve.over(within.run(), 241);
        double least = points.stream()
                .mapToDouble(at -> curve.expectedLoss(at.setting()))
                .min()
                .orElse(0);
        double[] good = points.stream()
                .mapToDouble(FittedCurve.At::setting)
                .filter(setting -> curve.expectedLoss(setting) <= least + within.share())
                .toArray();
        return Span.of(good[0], good[good.length - 1]);
    }

    private static List<Integer> outliers(SweepPosterior posterior) {
        List<Integer> outliers = new ArrayList<>();
        List<SweepPoint> points = posterior.sweep().points();
        for (int index = 0; index < points.size(); index++) {
            if (points.size() > 2 && posterior.weightOf(index) < OUTLIER_WEIGHT) {
                outliers.add(points.get(index).pull());
            }
        }
        return outliers;
    }

    /** Whether the factor was set differently, which a measured setting never quite repeats. */
    private boolean isStep(int earlier, int later) {
        OptionalDouble from = settingOf(earlier);
        OptionalDouble to = settingOf(later);
        return from.isPresent() && to.isPresent() && !axis.isSame(from.getAsDouble(), to.getAsDouble());
    }

    private OptionalDouble settingOf(int number) {
        return question.pulls().stream()
                .filter(pull -> pull.number() == number)
                .map(axis::of)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    /** Change over the last step between two different settings. */
    private OptionalDouble lastStep() {
        List<Reading> readings = Reading.of(question.pulls(), day.plan().goal().response());
        for (int index = readings.size() - 1; index > 0; index--) {
            Reading later = readings.get(index);
            Reading earlier = readings.get(index - 1);
            if (isStep(earlier.pull(), later.pull())) {
                return OptionalDouble.of(100 * (later.value() / earlier.value() - 1));
            }
        }
        return OptionalDouble.empty();
    }
}
