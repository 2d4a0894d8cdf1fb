package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Span;

/** The mixture bracket: with the spark backed off, rich step first, lean step only if the rich one was clean. */
final class MixtureStage {
    private final DayView view;
    private final SweepJudge judge;

    MixtureStage(DayView view, SweepJudge judge) {
        this.view = view;
        this.judge = judge;
    }

    /**
     * The advance that the bracket runs at: that of the bracket already begun, else backed off from the timing that was found; empty
     * when the plan has no timing.
     *
     * @param best lesser of best and knock limit, where a timing sweep was run
     */
    OptionalDouble advance(OptionalDouble best, OptionalDouble sweepMixture) {
        if (view.timing().isEmpty() || best.isEmpty()) {
            return OptionalDouble.empty();
        }
        Axis axis = view.timing().get();
        double back = view.day().plan().mixture().orElseThrow().sparkBackDeg();
        double wanted = axis.round(best.getAsDouble() - back);
        return view.used().stream()
                .filter(pull -> isOffMixture(pull, sweepMixture))
                .flatMap(pull -> axis.of(pull).stream().boxed())
                .filter(run -> Math.abs(run - wanted) <= back && run <= best.getAsDouble() - back / 2)
                .mapToDouble(Double::doubleValue)
                .findFirst()
                .stream()
                .boxed()
                .findFirst()
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.of(wanted));
    }

    private static boolean isOffMixture(MeasuredPull pull, OptionalDouble sweepMixture) {
        OptionalDouble lambda = DayView.mixtureOf(pull);
        return lambda.isPresent()
                && sweepMixture.isPresent()
                && Math.abs(lambda.getAsDouble() - sweepMixture.getAsDouble()) > DayView.ONE_MIXTURE;
    }

    /** Pulls of the bracket at that advance. */
    List<MeasuredPull> pulls(OptionalDouble advance) {
        return view.atAdvance(advance);
    }

    /** Where the bracket stands; empty without a clean pull in it. */
    Optional<SweepState> state(OptionalDouble advance) {
        Axis axis = view.mixture().orElseThrow();
        List<MeasuredPull> pulls = pulls(advance);
        OptionalDouble daring = view.mostDaring(axis, pulls);
        if (daring.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble ban = view.bans().leanCeiling(view.fuel(), advance);
        double leanest = axis.allowed().high();
        if (ban.isPresent()) {
            leanest = Math.min(leanest, axis.below(ban.getAsDouble()));
        }
        Span reach = Reach.of(
                axis, view.guards().step(axis), daring.getAsDouble(), ban, pulls, new Reach.Start(axis.start()));
        return Optional.of(judge.judge(new SweepJudge.Question(
                axis, pulls, reach, leanest, daring.getAsDouble(), List.of(), Optional.empty())));
    }

    /** The rich step, while no clean pull richer than the start of the bracket was run and the plan allows one. */
    OptionalDouble richStep(OptionalDouble advance, double start) {
        Axis axis = view.mixture().orElseThrow();
        double rich =
                axis.round(Math.max(axis.allowed().low(), start - axis.step().largest()));
        boolean done = pulls(advance).stream()
                .filter(view::isClean)
                .flatMap(pull -> DayView.mixtureOf(pull).stream().boxed())
                .anyMatch(lambda -> lambda < start - axis.step().resolution() - 1e-9);
        boolean possible = rich < start - axis.step().resolution() + 1e-9;
        return done || !possible ? OptionalDouble.empty() : OptionalDouble.of(rich);
    }
}
