package org.nextpull.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Span;

/**
 * One speed of the answer of a map.
 *
 * @param rpm the speed
 * @param answer the best advance there; empty where no clean pull went beyond it yet and nothing else decides it
 * @param runDeg the most advanced clean advance that was run there; empty where there was none
 * @param by what decides it
 */
public record MapRow(double rpm, Optional<Best> answer, OptionalDouble runDeg, ChosenBy by) {
    /**
     * The best advance of a speed.
     *
     * @param deg the least advance that is near enough to the best that knock and the plan allow, rounded toward retard
     * @param peak the peak with its interval; empty where knock or the plan holds the advance below it
     */
    public record Best(double deg, Optional<Peak> peak) {}

    /**
     * The peak of a speed.
     *
     * @param deg mean of where it may lie
     * @param interval of the best advance, 5 to 95 %
     */
    public record Peak(double deg, Span interval) {}

    /** Whether clean pulls went beyond the peak and stayed below it. */
    public boolean isBracketed() {
        return answer.flatMap(Best::peak).isPresent();
    }
}
