package org.nextpull.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Span;

/**
 * One speed of the answer.
 *
 * @param rpm the speed
 * @param answer the best advance there; empty where clean pulls do not surely reach it yet and nothing else decides it
 * @param runDeg the most advanced clean advance that was run there; empty where there was none
 * @param by what decides it
 */
public record AnswerRow(double rpm, Optional<Best> answer, OptionalDouble runDeg, ChosenBy by) {
    /**
     * The best advance of a speed.
     *
     * @param deg the least advance that is near enough to the best that knock and the plan allow, rounded toward retard
     * @param interval of it, 5 to 95 %; empty where knock or the plan holds it below that of the engine
     * @param peakDeg mean of where the peak may lie; empty where clean pulls do not surely go beyond it
     */
    public record Best(double deg, Optional<Span> interval, OptionalDouble peakDeg) {}

    /** Whether clean pulls went beyond the peak and stayed below it. */
    public boolean isBracketed() {
        return answer.filter(best -> best.peakDeg().isPresent()).isPresent();
    }
}
