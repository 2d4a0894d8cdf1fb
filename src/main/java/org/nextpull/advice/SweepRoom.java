package org.nextpull.advice;

import java.util.OptionalDouble;
import org.nextpull.unit.Span;

/**
 * Where a sweep may go, in the units of the planner.
 *
 * @param allowed lowest and highest setting that the plan allows
 * @param start where the sweep started; a setting that can be set
 * @param resolution finest step that can be set
 * @param largestStep how far beyond the most daring clean pull the next one may go
 * @param ceiling highest setting that knock or a limit leaves; empty when nothing was met
 */
public record SweepRoom(Span allowed, double start, Resolution resolution, double largestStep, OptionalDouble ceiling) {

    /** Finest step that can be set; positive. */
    public record Resolution(double step) {
        public Resolution {
            if (!(step > 0)) {
                throw new IllegalArgumentException("no resolution: " + step);
            }
        }
    }

    /** Highest setting that both the plan and what was met allow. */
    double highest() {
        return Math.min(allowed.high(), ceiling.orElse(Double.POSITIVE_INFINITY));
    }
}
