package org.nextpull.intake.capture;

import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;

/** One thing that a capture file says. */
sealed interface CaptureEntry {
    /**
     * The program began to write, at first or again after it had ended.
     *
     * @param source name of the source
     */
    record Started(String source, ArrivalTime at) implements CaptureEntry {}

    /** Something arrived. */
    record Received(Arrival arrival) implements CaptureEntry {}

    /**
     * Bytes of the file that are no whole record: it was cut there, or damaged.
     *
     * @param offset where they begin, from 0
     * @param bytes how many
     */
    record Damaged(long offset, long bytes) implements CaptureEntry {}

    /** The session was closed in good order. */
    record Ended(ArrivalTime at) implements CaptureEntry {}
}
