package org.nextpull.intake.capture;

import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.zip.CRC32C;
import org.nextpull.intake.wire.Chunk;

/**
 * The frame of a record in a capture file. A file is nothing but records, one after the other:
 *
 * <pre>
 * marker     4 bytes  F7 6E 70 1C
 * file id    4 bytes  the same in all records of a file, so a capture sent over a wire is not taken for records of this one
 * kind       1 byte   see {@link Kind}
 * length     4 bytes  bytes of the payload, at most 65,536
 * session ns 8 bytes  time since the session began
 * wall ms    8 bytes  time since 1970 as the computer's clock had it
 * payload
 * check      4 bytes  CRC-32C (RFC 3720, appendix B.4) of everything from the marker to the end of the payload
 * </pre>
 *
 * Numbers are big-endian. A record that is cut or damaged fails its check; the reader then looks for the next marker from which a whole
 * record of the same file id passes. So a file may be cut anywhere and be appended to afterwards.
 */
final class RecordFormat {
    static final int MARKER = 0xf76e701c;
    static final int HEAD_BYTES = 29;
    static final int CHECK_BYTES = 4;
    static final int MOST_PAYLOAD_BYTES = Chunk.MOST_BYTES;
    static final int MOST_RECORD_BYTES = HEAD_BYTES + MOST_PAYLOAD_BYTES + CHECK_BYTES;

    static final int ID_AT = 4;
    static final int KIND_AT = 8;
    static final int LENGTH_AT = 9;
    static final int SESSION_AT = 13;
    static final int WALL_AT = 21;

    /** Bytes of a finished file's record before the name: what it is, its length, its SHA-256. */
    static final int FILE_HEAD_BYTES = 41;

    private RecordFormat() {}

    /** The check of a record that starts at {@code start} and has a payload of that length. */
    static int check(ByteBuffer buffer, int start, int payloadBytes) {
        CRC32C crc = new CRC32C();
        crc.update(buffer.duplicate().position(start).limit(start + HEAD_BYTES + payloadBytes));
        return (int) crc.getValue();
    }

    /** What a record of a capture holds. The codes are part of the file format: never change one. */
    enum Kind {
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

        Kind(int code) {
            this.code = code;
        }

        byte code() {
            return (byte) code;
        }

        static Optional<Kind> of(byte code) {
            for (Kind kind : values()) {
                if (kind.code == code) {
                    return Optional.of(kind);
                }
            }
            return Optional.empty();
        }
    }
}
