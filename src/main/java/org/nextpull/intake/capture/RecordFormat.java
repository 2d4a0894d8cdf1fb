package org.nextpull.intake.capture;

import java.nio.ByteBuffer;
import java.util.zip.CRC32C;
import org.nextpull.intake.wire.Chunk;

/**
 * The frame of a record in a capture file. A file is nothing but records, one after the other:
 *
 * <pre>
 * marker     4 bytes  F7 6E 70 1C
 * file id    4 bytes  the same in all records of a file, so a capture sent over a wire is not taken for records of this one
 * kind       1 byte   see {@link RecordKind}
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
}
