package org.nextpull.channel;

/** What is known of knock in a pull. "Not measured" is not "none". */
public enum KnockMark {
    HEARD,
    NONE,
    NOT_MEASURED
}
