package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.channel.EngineSetting;

/**
 * The next step and why.
 *
 * @param action what to do
 * @param code why, in one word
 * @param setting what to set for the next pull; present unless the action is to stop
 * @param reason the numbers behind it
 * @param waitFor what to wait for, when the action is to wait
 * @param leave what to leave in the engine, when the action is to stop or to wait; empty only when nothing was run yet
 * @param earlier a stop that was said after an earlier pull, with what became of it
 */
public record Advice(
        Action action,
        AdviceCode code,
        Optional<EngineSetting> setting,
        Reason reason,
        Optional<WaitFor> waitFor,
        Optional<Chosen> leave,
        Optional<EarlierStop> earlier) {

    /** An advice beside which no earlier stop is to be named. */
    public Advice(
            Action action,
            AdviceCode code,
            Optional<EngineSetting> setting,
            Reason reason,
            Optional<WaitFor> waitFor,
            Optional<Chosen> leave) {
        this(action, code, setting, reason, waitFor, leave, Optional.empty());
    }

    Advice withEarlier(EarlierStop stop) {
        return new Advice(action, code, setting, reason, waitFor, leave, Optional.of(stop));
    }
}
