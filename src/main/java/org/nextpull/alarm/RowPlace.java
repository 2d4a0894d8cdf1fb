package org.nextpull.alarm;

import java.util.OptionalDouble;

/**
 * A row of a source.
 *
 * @param line line of the source, from 1
 * @param timeS the log's time in s; empty where it has none
 */
public record RowPlace(long line, OptionalDouble timeS) {

    /** Time since an earlier row; where the log has no time, as long as you like: an alarm must not wait for a clock that is not there. */
    double secondsSince(RowPlace earlier) {
        return timeS.isPresent() && earlier.timeS.isPresent()
                ? timeS.getAsDouble() - earlier.timeS.getAsDouble()
                : Double.POSITIVE_INFINITY;
    }
}
