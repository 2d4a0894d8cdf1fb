package org.nextpull.advice;

/** What a sweep varies. */
public enum Factor {
    TIMING,
    MIXTURE
}
