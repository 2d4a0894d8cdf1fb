package org.nextpull.intake.wire;

import java.util.Arrays;
import java.util.Optional;
import org.nextpull.finding.Finding;

/** One thing that happened at a source of bytes. */
public sealed interface Arrival
        permits Chunk, Arrival.Connected, Arrival.Lost, Arrival.FromFile, Arrival.FileComplete, Arrival.Trouble {
    /** Name of the source: the port or the folder as the user named it. */
    String source();

    ArrivalTime at();

    /** The source can be read from now on. What comes first may be the rest of a line. */
    record Connected(String source, ArrivalTime at) implements Arrival {}

    /**
     * Bytes are missing from here on.
     *
     * @param why the cause
     * @param bytes how many are missing, as far as that is known, else 0
     */
    record Lost(String source, ArrivalTime at, Cause why, long bytes) implements Arrival {}

    /**
     * The bytes that follow are those of a file, until the next of these.
     *
     * @param file name of the file within its folder
     * @param atByte place in the file of the first byte that follows
     */
    record FromFile(String source, ArrivalTime at, String file, long atByte) implements Arrival {}

    /**
     * A file is finished, as far as can be told: all of its bytes have come.
     *
     * @param file name of the file within its folder
     * @param taken what it is beside what was taken before
     * @param print its content
     */
    record FileComplete(String source, ArrivalTime at, String file, Taken taken, Fingerprint print)
            implements Arrival {}

    /** What a file is beside what was taken before. The codes stand in captures: never change one. */
    enum Taken {
        /** Not seen before. */
        NEW(0),
        /** Taken before; bytes were added at its end. */
        EXTENDED(1),
        /** Taken before; written anew with other content. */
        REWRITTEN(2);

        private final int code;

        Taken(int code) {
            this.code = code;
        }

        public byte code() {
            return (byte) code;
        }

        public static Optional<Taken> of(byte code) {
            return Arrays.stream(values()).filter(taken -> taken.code == code).findFirst();
        }
    }

    /** The source could not be reached; nothing of it is captured. */
    record Trouble(String source, ArrivalTime at, Finding finding) implements Arrival {}

    /** Why bytes are missing. The codes stand in captures: never change one. */
    enum Cause {
        /** The device went away. */
        UNPLUGGED(0),
        /** The program could not follow and memory ran short. */
        OVERRUN(1),
        /** They were used, but could not be written to the capture. */
        NOT_SAVED(2),
        /** The session closed the source. */
        CLOSED(3),
        /** The program ended without closing, and was started again. */
        STOPPED(4),
        /** The capture is damaged there. */
        DAMAGED(5);

        private final int code;

        Cause(int code) {
            this.code = code;
        }

        public byte code() {
            return (byte) code;
        }

        public static Optional<Cause> of(byte code) {
            return Arrays.stream(values()).filter(cause -> cause.code == code).findFirst();
        }
    }
}
