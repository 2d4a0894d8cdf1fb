package org.nextpull.advice;

import java.util.Locale;

/** What the operator is asked to do next. */
public enum Action {
    /** Run a pull at a setting that was not run yet. */
    PULL,
    /** Run a setting again. */
    REPEAT,
    /** Wait before the next pull. */
    WAIT,
    /** The sweep is over. */
    STOP;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
