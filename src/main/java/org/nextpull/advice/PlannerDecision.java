package org.nextpull.advice;

import org.nextpull.channel.EngineSetting;

/** What to do next: one more pull, or none. */
public sealed interface PlannerDecision {
    /** Where the day stands, whatever is done next. */
    PlannerAnswer answer();

    /**
     * One more pull.
     *
     * @param setting what to set
     * @param purpose what for
     */
    record Pull(EngineSetting setting, PullPurpose purpose, PlannerAnswer answer) implements PlannerDecision {}

    /**
     * No more pulls.
     *
     * @param reason why
     */
    record Stop(StopReason reason, PlannerAnswer answer) implements PlannerDecision {}
}
