package org.nextpull.advice;

import java.util.Locale;

/** What decided the setting to leave in the engine. */
public enum ChosenBy {
    PEAK,
    KNOCK_LIMIT,
    PLAN_LIMIT,
    HIGHEST_TRIED;

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
