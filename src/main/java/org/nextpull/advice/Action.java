package org.nextpull.advice;

import org.nextpull.finding.WrittenId;

/** What the operator is asked to do next. */
public enum Action implements WrittenId {
    /** Run a pull at a setting that was not run yet. */
    PULL,
    /** Run a setting again. */
    REPEAT,
    /** Wait before the next pull. */
    WAIT,
    /** The sweep is over. */
    STOP;
}
