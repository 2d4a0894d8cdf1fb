package org.nextpull.advice;

import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Span;

/**
 * How far the next pull of a sweep may go: never outside the plan's limits; toward advance or lean no more than the plan's step from
 * the most daring clean pull; toward retard or rich any distance. Where knock is not measured, the step of advance halves beyond 6 deg
 * above the start, and where a limit of the plan is not watched, everywhere.
 */
final class Reach {
    static final double UNHEARD_DEG = 6;

    private Reach() {}

    /** Where a configuration started, in the factor's unit. */
    record Start(double value) {}

    /** Longest step toward advance or lean, in the factor's unit. */
    record Step(double length) {}

    /**
     * The settings that may be pulled.
     *
     * @param axis the factor
     * @param step longest step toward advance or lean, as {@link Guards#step} has it
     * @param mostDaring most daring clean setting so far
     * @param ceiling lowest setting that knock or a limit forbids; empty when nothing does
     * @param pulls pulls of the sweep, whose last says whether knock is measured
     * @param start where the configuration started
     */
    static Span of(
            Axis axis, Step step, double mostDaring, OptionalDouble ceiling, List<MeasuredPull> pulls, Start start) {
        double high = mostDaring + step.length();
        boolean unheard = axis.factor() == Factor.TIMING
                && !pulls.isEmpty()
                && !pulls.get(pulls.size() - 1).knock().isMeasured();
        if (unheard) {
            double halves = start.value() + UNHEARD_DEG;
            high = Math.min(high, Math.max(halves, mostDaring + axis.step().largest() / 2));
        }
        high = Math.min(settable(axis, high, mostDaring), axis.allowed().high());
        if (ceiling.isPresent()) {
            high = Math.min(high, axis.below(ceiling.getAsDouble()));
        }
        return Span.of(Math.min(axis.allowed().low(), high), high);
    }

    /** The most daring setting that may be asked for, from what was clean. */
    static double most(Axis axis, Step step, double mostDaring) {
        return Math.min(
                settable(axis, mostDaring + step.length(), mostDaring),
                axis.allowed().high());
    }

    private static double settable(Axis axis, double high, double mostDaring) {
        return Math.max(axis.down(high), smallestStep(axis, mostDaring));
    }

    /** Half a step may be less than the engine's settings can resolve; then one resolution is the step, within the plan's. */
    private static double smallestStep(Axis axis, double mostDaring) {
        double next = axis.down(mostDaring) + axis.step().resolution();
        return next <= mostDaring + axis.step().largest() + 1e-9 ? next : mostDaring;
    }
}
