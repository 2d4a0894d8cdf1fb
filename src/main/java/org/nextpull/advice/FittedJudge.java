package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.fit.Belief;
import org.nextpull.fit.Experience;
import org.nextpull.fit.PooledScatter;
import org.nextpull.fit.SweepPriors;
import org.nextpull.plan.Goal;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.unit.Span;

/**
 * Judges a sweep by the posterior of its curve: asks the planner in its own units (degrees, hundredths of lambda) and reads the answer
 * off the same posterior.
 */
final class FittedJudge implements SweepJudge {
    /** The best is looked for this far above the start: an operator starts well on the retarded side, 6 to 10 deg. */
    private static final double BEST_ABOVE_START_DEG = 8;

    /** A bracket starts this far, in lambda, on the rich side of the best: 5 to 8 hundredths. */
    private static final double BEST_ABOVE_START_LAMBDA = 0.065;

    /** A check that knows the peak from an earlier sweep needs fewer pulls before it may end. */
    private static final int LEAST_PULLS_OF_CHECK = 3;

    private final Day day;

    FittedJudge(Day day) {
        this.day = day;
    }

    @Override
    public SweepState judge(Question question) {
        Scale scale = Scale.of(question.axis());
        SweepQuestion asked = new SweepQuestion(
                tried(question, scale),
                priors(question, scale),
                room(question, scale),
                rules(question),
                Optional.empty());
        return new SweepReading(day, question, scale).state(asked, SweepPlanner.judge(asked));
    }

    private List<TriedSetting> tried(Question question, Scale scale) {
        Goal.Response response = day.plan().goal().response();
        List<TriedSetting> tried = new ArrayList<>();
        for (MeasuredPull pull : question.pulls()) {
            OptionalDouble setting = question.axis().of(pull);
            if (setting.isEmpty()) {
                continue;
            }
            OptionalDouble value = Reading.of(List.of(pull), response).stream()
                    .mapToDouble(Reading::value)
                    .findFirst();
            boolean knocked = pull.knock().isHeard() && !day.lifted().contains(pull.number());
            tried.add(new TriedSetting(
                    scale.toPlanner(setting.getAsDouble()),
                    value,
                    !knocked || question.axis().factor() == Factor.MIXTURE,
                    OptionalDouble.empty(),
                    pull.number(),
                    pull.order()));
        }
        for (double knockAt : question.knockAt()) {
            boolean counted = tried.stream().anyMatch(pull -> pull.setting() == scale.toPlanner(knockAt));
            if (!counted) {
                tried.add(new TriedSetting(
                        scale.toPlanner(knockAt), OptionalDouble.empty(), false, OptionalDouble.empty(), 0, 0));
            }
        }
        return tried;
    }

    private SweepPriors priors(Question question, Scale scale) {
        boolean timing = question.axis().factor() == Factor.TIMING;
        double start = question.axis().start();
        double guess = timing ? start + BEST_ABOVE_START_DEG : start + BEST_ABOVE_START_LAMBDA;
        double within =
                scale.toPlanner(Math.min(guess, question.axis().allowed().high()));
        SweepPriors usual = timing ? SweepPriors.timing(within) : SweepPriors.mixture(within);
        SweepPriors scattered = usual.withPooled(pooled());
        Optional<Belief> curvature =
                day.experience().flatMap(known -> timing ? known.lnTimingCurvature() : known.lnMixtureCurvature());
        SweepPriors learned = curvature.map(scattered::withLnCurvature).orElse(scattered);
        return question.peak().map(peak -> learned.withPeak(peak)).orElse(learned);
    }

    /** Scatter of the day's repeats, else of earlier days; repeats inside the sweep speak for themselves too, but only a little. */
    private PooledScatter pooled() {
        return day.experience().flatMap(Experience::scatter).orElse(PooledScatter.none());
    }

    private static SweepRoom room(Question question, Scale scale) {
        Axis axis = question.axis();
        double step = Math.max(0, question.reach().high() - question.mostDaring());
        boolean limited = question.ceiling() < axis.allowed().high() - 1e-9;
        return new SweepRoom(
                Span.of(
                        scale.toPlanner(axis.allowed().low()),
                        scale.toPlanner(axis.allowed().high())),
                scale.toPlanner(axis.start()),
                new SweepRoom.Resolution(scale.toPlanner(axis.step().resolution())),
                scale.toPlanner(step),
                limited ? OptionalDouble.of(scale.toPlanner(question.ceiling())) : OptionalDouble.empty());
    }

    private PlannerRules rules(Question question) {
        boolean timing = question.axis().factor() == Factor.TIMING;
        PlannerRules usual = timing
                ? flagged(question.axis()).withNearBest(day.plan().goal().nearBestPercent() / 100)
                : PlannerRules.mixture();
        return question.peak().isPresent()
                ? usual.withPulls(new PlannerRules.Pulls(
                        LEAST_PULLS_OF_CHECK, usual.pulls().most()))
                : usual;
    }

    /** Where the margin is as large as a step, a step that knocks leaves nothing between to be had: it may be as large as the plan has it. */
    private PlannerRules flagged(Axis axis) {
        PlannerRules rules = PlannerRules.flaggedTiming();
        return day.plan().limits().knockMarginDeg() >= axis.step().largest() - 1e-9
                ? rules.withClimb(PlannerRules.Climb.free())
                : rules;
    }

    /**
     * Turns the factor's unit into the planner's: degrees stay, lambda becomes hundredths.
     *
     * @param perUnit planner's units in one of the factor's
     */
    record Scale(double perUnit) {
        static Scale of(Axis axis) {
            return new Scale(axis.factor() == Factor.TIMING ? 1 : 100);
        }

        double toPlanner(double value) {
            return value * perUnit;
        }

        double fromPlanner(double value) {
            return Math.rint(value / perUnit * 1e9) / 1e9;
        }

        Span fromPlanner(Span span) {
            return Span.of(span.low() / perUnit, span.high() / perUnit);
        }
    }
}
