package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.fit.Belief;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Span;

/** Judges a timing sweep at one mixture, within what knock and the plan allow. */
final class TimingStage {
    private final DayView view;
    private final SweepJudge judge;

    TimingStage(DayView view, SweepJudge judge) {
        this.view = view;
        this.judge = judge;
    }

    /**
     * Where the sweep at a mixture stands; empty without a clean pull at it.
     *
     * @param lambda the mixture; empty where none is known
     * @param peak where the peak is believed to lie from an earlier sweep
     */
    Optional<SweepState> at(OptionalDouble lambda, Optional<Belief> peak) {
        return judge(view.atMixture(lambda), lambda, peak);
    }

    Optional<SweepState> judge(List<MeasuredPull> pulls, OptionalDouble lambda, Optional<Belief> peak) {
        Axis axis = view.timing().orElseThrow();
        OptionalDouble daring = view.mostDaring(axis, pulls);
        if (daring.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble ban = view.bans().advanceCeiling(view.fuel(), lambda);
        double highest = axis.allowed().high();
        if (ban.isPresent()) {
            highest = Math.min(highest, axis.below(ban.getAsDouble()));
        }
        Reach.Start start = new Reach.Start(StartOfDay.advance(view, axis));
        Span reach = Reach.of(axis, view.guards().step(axis), daring.getAsDouble(), ban, pulls, start);
        return Optional.of(judge.judge(new SweepJudge.Question(
                axis, pulls, reach, highest, daring.getAsDouble(), knockAt(axis, lambda), peak)));
    }

    /** Settings at which knock was heard at this mixture or a richer one, on this fuel, and not lifted. */
    private List<Double> knockAt(Axis axis, OptionalDouble lambda) {
        return view.here().stream()
                .filter(pull -> pull.knock().isHeard() && !view.day().lifted().contains(pull.number()))
                .filter(pull -> lambda.isEmpty()
                        || DayView.mixtureOf(pull).isEmpty()
                        || DayView.mixtureOf(pull).getAsDouble() <= lambda.getAsDouble() + DayView.ONE_MIXTURE)
                .flatMap(pull -> axis.of(pull).stream().boxed())
                .toList();
    }
}
