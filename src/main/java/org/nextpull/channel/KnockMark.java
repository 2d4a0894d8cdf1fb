package org.nextpull.channel;

import org.nextpull.finding.WrittenId;

/** What is known of knock in a pull. "Not measured" is not "none". */
public enum KnockMark implements WrittenId {
    HEARD,
    NONE,
    NOT_MEASURED
}
