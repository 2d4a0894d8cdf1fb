package org.nextpull.intake.capture;

import java.util.Optional;

/** What a record of a capture holds. The codes are part of the file format: never change one. */
enum RecordKind {
    /** The program began to write, at first or again; payload: the name of the source in UTF-8. */
    STARTED(1),
    /** Bytes as they arrived. */
    BYTES(2),
    /** The source could be read. */
    CONNECTED(3),
    /** Bytes are missing; payload: the cause as one byte, then how many as 8 bytes. */
    LOST(4),
    /** The bytes that follow are those of a file; payload: place in it as 8 bytes, then its name in UTF-8. */
    FROM_FILE(5),
    /** The session was closed; no payload. */
    ENDED(6),
    /** A file is finished; payload: what it is as one byte, its length as 8 and its SHA-256 as 32 bytes, then its name in UTF-8. */
    FILE_COMPLETE(7);

    private final int code;

    RecordKind(int code) {
        this.code = code;
    }

    byte code() {
        return (byte) code;
    }

    static Optional<RecordKind> of(byte code) {
        for (RecordKind kind : values()) {
            if (kind.code == code) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
