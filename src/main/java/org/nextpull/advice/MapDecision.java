package org.nextpull.advice;

import org.nextpull.channel.EngineSetting;

/** What to do next with a map. */
public sealed interface MapDecision {
    /** Where the day stands, whatever is done next. */
    MapAnswer answer();

    /**
     * One more pull.
     *
     * @param setting what to set
     * @param purpose what for
     */
    record Pull(EngineSetting setting, PullPurpose purpose, MapAnswer answer) implements MapDecision {}

    /**
     * No more pulls.
     *
     * @param reason why
     */
    record Stop(StopReason reason, MapAnswer answer) implements MapDecision {}
}
