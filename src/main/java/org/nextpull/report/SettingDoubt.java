package org.nextpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.nextpull.advice.Proposal;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * What is to be said of a setting that an operator says is in the engine: it is a fact and is taken, but it may lie outside the plan, or
 * further on than a step beyond the most daring clean pull.
 */
public final class SettingDoubt {
    private static final double HAIR = 1e-9;

    private final SweepPlan plan;
    private final List<MeasuredPull> clean;

    /**
     * Doubts on the settings of a day.
     *
     * @param plan the plan as it stands now
     * @param result the day so far
     */
    public SettingDoubt(SweepPlan plan, SessionResult result) {
        this.plan = plan;
        this.clean = result.pulls().stream()
                .filter(MeasuredPull::isUsed)
                .filter(result::isClean)
                .toList();
    }

    /** How a factor is written. */
    private record Factor(String name, int places, String unit) {
        String text(double value) {
            return name + Shown.fixed(value, places) + unit;
        }
    }

    /** The sentence; empty where there is no doubt. */
    public Optional<String> of(Proposal setting) {
        List<String> doubts = new ArrayList<>();
        plan.timing().ifPresent(timing -> {
            Factor factor = new Factor("", 1, " deg");
            Span allowed = Span.of(timing.least().deg(), timing.most().deg());
            double step = timing.step().largest();
            setting.advance()
                    .map(Advance::deg)
                    .ifPresent(deg -> doubt(
                                    factor,
                                    deg,
                                    allowed,
                                    reach(pull -> pull.setting().advance().map(Advance::deg), step))
                            .ifPresent(doubts::add));
            setting.offset()
                    .map(Advance::deg)
                    .ifPresent(deg -> doubt(
                                    factor,
                                    deg,
                                    allowed,
                                    reach(pull -> pull.setting().offset().map(Advance::deg), step))
                            .ifPresent(doubts::add));
        });
        plan.mixture()
                .ifPresent(mixture -> setting.lambda()
                        .map(Lambda::value)
                        .ifPresent(lambda -> doubt(
                                        new Factor("lambda ", 3, ""),
                                        lambda,
                                        Span.of(
                                                mixture.richest().value(),
                                                mixture.leanest().value()),
                                        reach(
                                                pull -> pull.setting()
                                                        .askedLambda()
                                                        .or(() -> pull.setting().lambda())
                                                        .map(Lambda::value),
                                                mixture.step().largest()))
                                .ifPresent(doubts::add)));
        return doubts.isEmpty() ? Optional.empty() : Optional.of("Careful: " + String.join("; ", doubts) + ".");
    }

    private OptionalDouble reach(Function<MeasuredPull, Optional<Double>> of, double step) {
        OptionalDouble most = clean.stream()
                .flatMap(pull -> of.apply(pull).stream())
                .mapToDouble(Double::doubleValue)
                .max();
        return most.isPresent() ? OptionalDouble.of(most.getAsDouble() + step) : most;
    }

    private static Optional<String> doubt(Factor factor, double value, Span allowed, OptionalDouble reach) {
        if (value < allowed.low() - HAIR || value > allowed.high() + HAIR) {
            return Optional.of(factor.text(value) + " is outside of the plan, which allows "
                    + factor.text(allowed.low()) + " to " + factor.text(allowed.high()));
        }
        return reach.isPresent() && value > reach.getAsDouble() + HAIR
                ? Optional.of(factor.text(value) + " is further than a step beyond what was clean; a step goes to "
                        + factor.text(reach.getAsDouble()))
                : Optional.empty();
    }
}
