package org.nextpull.advice;

import org.nextpull.finding.WrittenId;

/** What decided the setting to leave in the engine. */
public enum ChosenBy implements WrittenId {
    PEAK,
    KNOCK_LIMIT,
    PLAN_LIMIT,
    HIGHEST_TRIED;
}
