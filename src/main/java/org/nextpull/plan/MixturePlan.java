package org.nextpull.plan;

import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * The mixture sweep, table {@code [mixture]}.
 *
 * @param start where the sweep starts
 * @param richest the richest setting allowed
 * @param leanest the leanest setting allowed
 * @param step in lambda
 */
public record MixturePlan(Lambda start, Lambda richest, Lambda leanest, SweepStep step) {
    public static final double LARGEST_STEP_LAMBDA = 0.034;
    public static final double RESOLUTION_LAMBDA = 0.005;

    public MixturePlan {
        if (richest.compareTo(start) > 0 || start.compareTo(leanest) > 0) {
            throw new IllegalArgumentException("start outside its limits: " + richest + ", " + start + ", " + leanest);
        }
    }

    /** What is allowed, in lambda. */
    public Span allowedLambda() {
        return Span.of(richest.value(), leanest.value());
    }
}
