package org.nextpull.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.MixturePlan;
import org.nextpull.plan.SweepStep;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * One factor of a sweep, as a number line that grows toward risk: toward advance, or toward lean.
 *
 * @param kind which quantity the line measures
 * @param allowed from the most retarded, or richest, to the most advanced, or leanest, setting that the plan allows
 * @param start where the plan starts
 * @param step the plan's steps
 */
record Axis(Kind kind, Span allowed, double start, SweepStep step) {
    /** A value this close below a step counts as being on it, in steps. */
    private static final double ON_STEP = 1e-6;

    /** A measured value this far short of a step was meant to be on it, in steps. */
    private static final double MEANT = 0.2;

    /** No setting is resolved as finely as this. */
    private static final double NOTHING = 1e-9;

    private static final double PER_UNIT = 1e9;

    /** What the line measures. */
    enum Kind {
        FLAT_ADVANCE,
        OFFSET,
        LAMBDA
    }

    static Axis of(TimingPlan timing) {
        return settable(
                timing.sets() == TimingPlan.Sets.OFFSET ? Kind.OFFSET : Kind.FLAT_ADVANCE,
                timing.allowedDeg(),
                timing.start().deg(),
                timing.step());
    }

    static Axis of(MixturePlan mixture) {
        return settable(Kind.LAMBDA, mixture.allowedLambda(), mixture.start().value(), mixture.step());
    }

    /** Draws the plan's limits in to the outermost settings that can be set, so that rounding never leaves the plan. */
    private static Axis settable(Kind kind, Span allowed, double start, SweepStep step) {
        Axis axis = new Axis(kind, allowed, start, step);
        double low = Math.min(start, axis.up(allowed.low()));
        double high = Math.max(start, axis.down(allowed.high()));
        return new Axis(kind, Span.of(low, high), start, step);
    }

    /** Two settings no further apart than this are one setting remade. */
    double sameSetting() {
        return 0.6 * step.resolution();
    }

    boolean isSame(double one, double other) {
        return Math.abs(one - other) <= sameSetting();
    }

    /**
     * The nearest setting toward retard or rich that can be set; settings lie whole resolutions from the plan's start. Down is toward
     * retard for spark advance and toward rich for lambda, so both factors round the same way.
     */
    double down(double value) {
        return settingAt(Math.floor((value - start) / step.resolution() + ON_STEP));
    }

    /** The nearest setting toward advance or lean that can be set. */
    double up(double value) {
        return settingAt(Math.ceil((value - start) / step.resolution() - ON_STEP));
    }

    /**
     * The setting to ask for when a pull is to be run again: where it was the plan's start, the start; else the one toward retard or
     * rich, and a value that lies just short of a step was meant to be on it.
     */
    double again(double measured) {
        if (isSame(measured, start)) {
            return start;
        }
        return round(measured + MEANT * step.resolution());
    }

    /** The highest setting that can be set and lies below a forbidden one. */
    double below(double forbidden) {
        double rounded = down(forbidden);
        return rounded < forbidden - NOTHING ? rounded : down(rounded - step.resolution());
    }

    /** Whole steps from the start, without the last bits that a multiplication leaves, so that steps of 0.1 print as such. */
    private double settingAt(double steps) {
        return Math.rint((start + steps * step.resolution()) * PER_UNIT) / PER_UNIT;
    }

    /** Rounds toward retard or rich, into the plan's limits. */
    double round(double value) {
        return Math.max(allowed.low(), Math.min(allowed.high(), down(value)));
    }

    /** The value of this factor in a pull: measured where the log has it, else asked; an offset is always asked. */
    OptionalDouble of(MeasuredPull pull) {
        EngineSetting setting = pull.setting();
        Optional<Double> value = switch (kind) {
            case FLAT_ADVANCE -> setting.advance().map(Advance::deg);
            case OFFSET -> setting.offset().map(Advance::deg);
            case LAMBDA -> setting.lambda().map(Lambda::value);
        };
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
