package org.nextpull.advice;

import java.util.List;
import org.nextpull.channel.EngineSetting;

/**
 * What to leave in the engine.
 *
 * @param setting the setting
 * @param by what decided it
 * @param proof what the pulls show of it
 */
public record Chosen(EngineSetting setting, ChosenBy by, Proof proof) {

    /**
     * What the pulls show of a setting.
     *
     * @param bracketed the factors that were swept and whose peak is bracketed
     * @param open the other factors of the plan
     * @param besideBestDeg how far its spark lies above the stated best one number, or the best that a cap permits, degrees; 0 where there
     *     is none
     * @param standing how it was run
     */
    public record Proof(List<Factor> bracketed, List<Factor> open, double besideBestDeg, Standing standing) {
        public Proof {
            bracketed = List.copyOf(bracketed);
            open = List.copyOf(open);
        }
    }

    /** How a setting was run. */
    public enum Standing {
        /** It, or one within a step of it, was run again after the sweeps had ended. */
        PROVEN,
        /** It was not run again to prove it. */
        NOT_PROVEN,
        /** It is the only clean setting so far, with nothing to hold it against. */
        ONLY_ONE,
        /** No pull was run at it: every setting so far met something. */
        NOT_RUN
    }
}
