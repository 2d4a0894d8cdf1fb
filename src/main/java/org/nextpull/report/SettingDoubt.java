package org.nextpull.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.MixturePlan;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * What is to be said of a setting that an operator says is in the engine: it is a fact and is taken, but it may lie outside the plan, or
 * further on than a step beyond the furthest clean pull.
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

    /**
     * A factor of a setting.
     *
     * @param name stands before a value
     * @param places decimal places of a value
     * @param unit stands behind it
     * @param allowed by the plan
     * @param step the plan's largest
     */
    private record Factor(String name, int places, String unit, Span allowed, double step) {
        static Factor of(TimingPlan timing) {
            return new Factor("", 1, " deg", timing.allowedDeg(), timing.step().largest());
        }

        static Factor of(MixturePlan mixture) {
            return new Factor(
                    "lambda ", 3, "", mixture.allowedLambda(), mixture.step().largest());
        }

        String text(double value) {
            return name + Shown.fixed(value, places) + unit;
        }
    }

    /** The sentence on what somebody says is set; empty where there is no doubt. */
    public Optional<String> of(AskedSetting setting) {
        return of(setting.setting());
    }

    /** The sentence; empty where there is no doubt. */
    public Optional<String> of(EngineSetting setting) {
        Optional<Factor> spark = plan.timing().map(Factor::of);
        Optional<Factor> mixture = plan.mixture().map(Factor::of);
        List<String> doubts = Stream.of(
                        doubt(
                                spark,
                                setting.advance().map(Advance::deg),
                                run -> run.setting().advance().map(Advance::deg)),
                        doubt(
                                spark,
                                setting.offset().map(Advance::deg),
                                run -> run.setting().offset().map(Advance::deg)),
                        doubt(
                                mixture,
                                setting.lambda().map(Lambda::value),
                                run -> run.asked()
                                        .lambda()
                                        .or(() -> run.setting().lambda())
                                        .map(Lambda::value)))
                .flatMap(Optional::stream)
                .toList();
        return doubts.isEmpty() ? Optional.empty() : Optional.of("CHECK: " + String.join("; ", doubts) + ".");
    }

    private Optional<String> doubt(
            Optional<Factor> factor, Optional<Double> value, Function<MeasuredPull, Optional<Double>> run) {
        return factor.flatMap(known -> value.flatMap(set -> doubt(known, set, reach(run, known.step()))));
    }

    private OptionalDouble reach(Function<MeasuredPull, Optional<Double>> of, double step) {
        OptionalDouble most = clean.stream()
                .flatMap(pull -> of.apply(pull).stream())
                .mapToDouble(Double::doubleValue)
                .max();
        return most.isPresent() ? OptionalDouble.of(most.getAsDouble() + step) : most;
    }

    private static Optional<String> doubt(Factor factor, double value, OptionalDouble reach) {
        Span allowed = factor.allowed();
        if (value < allowed.low() - HAIR || value > allowed.high() + HAIR) {
            return Optional.of(factor.text(value) + " is outside the plan (" + factor.text(allowed.low()) + " to "
                    + factor.text(allowed.high()) + ")");
        }
        return reach.isPresent() && value > reach.getAsDouble() + HAIR
                ? Optional.of(factor.text(value) + " is past one step from the last clean pull (max "
                        + factor.text(reach.getAsDouble()) + ")")
                : Optional.empty();
    }
}
