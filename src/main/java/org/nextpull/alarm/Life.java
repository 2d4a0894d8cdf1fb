package org.nextpull.alarm;

import java.util.Locale;

/** Whether a channel lives in a pull, and if not, how one sees that. */
public enum Life {
    LIVE,
    /** There is no such column. */
    NOT_LOGGED,
    /** It gave no reading for too long, or none at all. */
    BLANK,
    /** It gave the same reading over and over, to the last digit. */
    FROZEN,
    /** It went beyond what a sensor can show: it is at its stop, or broken. */
    OUT_OF_RANGE,
    /** No engine reads that under load: it is dead, swapped with another or wrongly scaled. */
    IMPLAUSIBLE;

    /** As JSON writes it: {@code not-logged}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
