package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.EngineSetting;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;

/**
 * A day as the stages look at it: the pulls of the present configuration, its factors and what is forbidden.
 *
 * @param day the day
 * @param timing the timing factor, where the plan has one
 * @param mixture the mixture factor, where the plan has one
 * @param blocks what knock and limits block
 * @param configuration the present configuration and fuel: what was announced for the next pull, else that of the last pull
 * @param here all pulls of the present configuration and fuel, in order
 */
record DayView(
        Day day,
        Optional<Axis> timing,
        Optional<Axis> mixture,
        Blocks blocks,
        EngineSetting configuration,
        List<MeasuredPull> here) {
    /** Pulls whose mixtures lie within this of each other are one timing sweep: a measured lambda scatters about its target. */
    static final double ONE_MIXTURE = 0.015;

    static DayView of(Day day) {
        Optional<Axis> timing = day.plan().timing().map(Axis::of);
        Optional<Axis> mixture = day.plan().mixture().map(Axis::of);
        List<MeasuredPull> blocking = day.pulls().stream()
                .filter(pull -> !pull.isClean() && !day.lifted().contains(pull.number()))
                .toList();
        Blocks blocks = Blocks.of(timing, mixture, blocking, day.plan().limits().knockMarginDeg());
        EngineSetting configuration = configuration(day);
        List<MeasuredPull> here =
                day.pulls().stream().filter(pull -> isOf(configuration, pull)).toList();
        return new DayView(day, timing, mixture, blocks, configuration, here);
    }

    private static boolean isOf(EngineSetting configuration, MeasuredPull pull) {
        return pull.isPull() && pull.setting().isSameConfiguration(configuration);
    }

    /** Whether a pull is of the present configuration and fuel. */
    boolean isHere(MeasuredPull pull) {
        return isOf(configuration, pull);
    }

    static EngineSetting configuration(Day day) {
        return configurationAfter(day, day.pulls().size());
    }

    /** That of a day as it stood after its first pulls. */
    static EngineSetting configurationAfter(Day day, int pulls) {
        int last = pulls - 1;
        while (last >= 0 && !day.pulls().get(last).isPull()) {
            last--;
        }
        return day.next()
                .after(
                        last < 0
                                ? Optional.empty()
                                : Optional.of(day.pulls().get(last).setting()),
                        day.plan().fuel().blend());
    }

    /** What guards the next step. */
    Guards guards() {
        return new Guards(this);
    }

    Optional<String> fuel() {
        return configuration.fuel();
    }

    /** Pulls of the present configuration that count. */
    List<MeasuredPull> used() {
        return here.stream().filter(MeasuredPull::isUsed).toList();
    }

    /** A pull is clean when nothing was met in it, or the operator lifted what was. */
    boolean isClean(MeasuredPull pull) {
        return pull.isClean() || day.lifted().contains(pull.number());
    }

    /** The mixture that a pull belongs to: what was asked, else what was measured. */
    static OptionalDouble mixtureOf(MeasuredPull pull) {
        return pull.asked()
                .lambda()
                .or(() -> pull.setting().lambda())
                .map(Lambda::value)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    OptionalDouble advanceOf(MeasuredPull pull) {
        return timing.map(axis -> axis.of(pull)).orElse(OptionalDouble.empty());
    }

    /**
     * The mixture that the timing sweep runs at: that of the first clean pull which no ban forbids, else the plan's start made rich
     * enough for the blocks; empty when the plan has no mixture and the log none.
     */
    OptionalDouble sweepMixture() {
        for (MeasuredPull pull : used()) {
            OptionalDouble lambda = mixtureOf(pull);
            if (isClean(pull)
                    && lambda.isPresent()
                    && isInPlan(mixture, lambda)
                    && !isTooLean(lambda.getAsDouble(), advanceOf(pull))) {
                return lambda;
            }
        }
        return mixture.map(axis -> richEnough(axis, axis.start(), OptionalDouble.empty()))
                .orElse(OptionalDouble.empty());
    }

    private static boolean isInPlan(Optional<Axis> axis, OptionalDouble value) {
        return axis.isEmpty()
                || value.isEmpty()
                || axis.get().isSame(axis.get().round(value.getAsDouble()), value.getAsDouble())
                || axis.get().allowed().contains(value.getAsDouble());
    }

    /** Whether knock forbids the advance of a setting at its mixture, or at that of the sweep where it names none. */
    boolean isForbidden(EngineSetting setting) {
        OptionalDouble advance = setting.advance()
                .or(setting::offset)
                .map(value -> OptionalDouble.of(value.deg()))
                .orElse(OptionalDouble.empty());
        return isAtOrAbove(advance, blocks.advanceCeiling(fuel(), mixtureOf(setting)));
    }

    /** The mixture that a setting will have: its own, or that of the sweep where the plan sets none. */
    OptionalDouble mixtureOf(EngineSetting setting) {
        return setting.lambda().isPresent()
                ? OptionalDouble.of(setting.lambda().get().value())
                : sweepMixture();
    }

    private static boolean isAtOrAbove(OptionalDouble value, OptionalDouble ceiling) {
        return ceiling.isPresent() && value.isPresent() && value.getAsDouble() >= ceiling.getAsDouble() - 1e-9;
    }

    private boolean isTooLean(double lambda, OptionalDouble advance) {
        OptionalDouble ceiling = blocks.leanCeiling(fuel(), advance);
        return ceiling.isPresent() && lambda >= ceiling.getAsDouble() - 1e-9;
    }

    /** A mixture that the blocks allow: the wanted one, or a step richer than the richest that they block. */
    OptionalDouble richEnough(Axis axis, double wanted, OptionalDouble advance) {
        OptionalDouble ceiling = blocks.leanCeiling(fuel(), advance);
        if (ceiling.isEmpty() || wanted < ceiling.getAsDouble() - 1e-9) {
            return OptionalDouble.of(axis.round(wanted));
        }
        double richer = axis.down(ceiling.getAsDouble() - axis.step().largest());
        return OptionalDouble.of(Math.max(axis.allowed().low(), richer));
    }
}
