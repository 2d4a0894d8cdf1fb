package org.nextpull.intake.capture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.Fingerprint;

/**
 * Reads a capture file from its start. Never fails on what the file holds: what is no whole record is reported as damage, and the next
 * whole record is found. Needs memory for two records at most. May be used while the file is written, and then reads up to the end as it
 * is at that moment.
 */
final class CaptureReader implements AutoCloseable {
    private static final int BUFFER_BYTES = 2 * RecordFormat.MOST_RECORD_BYTES;

    private final InputStream in;
    private final ByteBuffer buffer = ByteBuffer.allocate(BUFFER_BYTES).limit(0);
    private RecordDecoder decoder;
    private OptionalInt fileId = OptionalInt.empty();
    private long offset;
    private long recordStart;
    private boolean ended;
    private Optional<Entry> afterDamage = Optional.empty();

    private CaptureReader(InputStream in, String source) {
        this.in = in;
        this.decoder = new RecordDecoder(source);
    }

    /** Reads a file. Should the record with the name of the source be damaged, the source has the name of the file. */
    static CaptureReader open(Path file) throws IOException {
        return of(Files.newInputStream(file), String.valueOf(file.getFileName()));
    }

    /**
     * Reads a capture from any stream, which is closed with the reader.
     *
     * @param source name of the source, should the record with it be damaged
     */
    static CaptureReader of(InputStream in, String source) {
        return new CaptureReader(in, source);
    }

    /** The next entry; empty at the end. */
    Optional<Entry> next() throws IOException {
        if (afterDamage.isPresent()) {
            Optional<Entry> entry = afterDamage;
            afterDamage = Optional.empty();
            return entry;
        }
        long damageFrom = offset;
        while (true) {
            fill();
            if (!buffer.hasRemaining()) {
                return damage(damageFrom, Optional.empty());
            }
            Optional<Entry> entry = record();
            if (entry.isPresent()) {
                return damage(damageFrom, entry);
            }
            skipToMarker();
        }
    }

    /** Bytes of the file up to the end of the entry given last. */
    long offset() {
        return offset;
    }

    /** The id of the file, once a whole record was read. */
    OptionalInt fileId() {
        return fileId;
    }

    private Optional<Entry> damage(long from, Optional<Entry> entry) {
        long good = entry.isPresent() ? recordStart : offset;
        if (good == from) {
            return entry;
        }
        afterDamage = entry;
        return Optional.of(new Entry.Damaged(from, good - from));
    }

    private Optional<Entry> record() {
        int start = buffer.position();
        int left = buffer.remaining();
        if (left < RecordFormat.HEAD_BYTES + RecordFormat.CHECK_BYTES || buffer.getInt(start) != RecordFormat.MARKER) {
            return Optional.empty();
        }
        int id = buffer.getInt(start + RecordFormat.ID_AT);
        int payload = buffer.getInt(start + RecordFormat.LENGTH_AT);
        boolean fits = payload >= 0
                && payload <= RecordFormat.MOST_PAYLOAD_BYTES
                && payload <= left - RecordFormat.HEAD_BYTES - RecordFormat.CHECK_BYTES;
        if (!fits
                || (fileId.isPresent() && fileId.getAsInt() != id)
                || buffer.getInt(start + RecordFormat.HEAD_BYTES + payload)
                        != RecordFormat.check(buffer, start, payload)) {
            return Optional.empty();
        }
        Optional<Entry> entry = decoder.decode(buffer, start, payload);
        if (entry.isEmpty()) {
            return entry;
        }
        if (entry.get() instanceof Entry.Started started) {
            decoder = new RecordDecoder(started.source());
        }
        fileId = OptionalInt.of(id);
        recordStart = offset;
        move(RecordFormat.HEAD_BYTES + payload + RecordFormat.CHECK_BYTES);
        return entry;
    }

    private void skipToMarker() {
        byte first = (byte) (RecordFormat.MARKER >>> 24);
        int at = buffer.position() + 1;
        while (at < buffer.limit() && buffer.get(at) != first) {
            at++;
        }
        move(at - buffer.position());
    }

    private void move(int bytes) {
        buffer.position(buffer.position() + bytes);
        offset += bytes;
    }

    private void fill() throws IOException {
        if (ended || buffer.remaining() >= RecordFormat.MOST_RECORD_BYTES) {
            return;
        }
        buffer.compact();
        while (buffer.hasRemaining()) {
            int count = in.read(buffer.array(), buffer.position(), buffer.remaining());
            if (count < 0) {
                ended = true;
                break;
            }
            buffer.position(buffer.position() + count);
        }
        buffer.flip();
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    /** Turns a whole record, whose check has passed, into an entry; empty for one that this version cannot understand. */
    private record RecordDecoder(String source) {
        Optional<Entry> decode(ByteBuffer buffer, int start, int payloadBytes) {
            long sessionNs = buffer.getLong(start + RecordFormat.SESSION_AT);
            Optional<RecordFormat.Kind> kind = RecordFormat.Kind.of(buffer.get(start + RecordFormat.KIND_AT));
            if (sessionNs < 0 || kind.isEmpty()) {
                return Optional.empty();
            }
            ArrivalTime at = new ArrivalTime(sessionNs, buffer.getLong(start + RecordFormat.WALL_AT));
            byte[] payload = new byte[payloadBytes];
            buffer.get(start + RecordFormat.HEAD_BYTES, payload);
            return switch (kind.get()) {
                case STARTED -> Optional.of(new Entry.Started(new String(payload, StandardCharsets.UTF_8), at));
                case BYTES -> received(Chunk.copyOf(source, at, payload, payload.length));
                case CONNECTED -> received(new Arrival.Connected(source, at));
                case LOST -> lost(at, payload);
                case FROM_FILE -> fromFile(at, payload);
                case FILE_COMPLETE -> fileComplete(at, payload);
                case ENDED -> Optional.of(new Entry.Ended(at));
            };
        }

        private Optional<Entry> lost(ArrivalTime at, byte[] payload) {
            if (payload.length != 1 + Long.BYTES) {
                return Optional.empty();
            }
            long bytes = ByteBuffer.wrap(payload).getLong(1);
            return Arrival.Cause.of(payload[0])
                    .map(cause -> new Entry.Received(new Arrival.Lost(source, at, cause, bytes)));
        }

        private Optional<Entry> fromFile(ArrivalTime at, byte[] payload) {
            if (payload.length < Long.BYTES) {
                return Optional.empty();
            }
            String name = new String(payload, Long.BYTES, payload.length - Long.BYTES, StandardCharsets.UTF_8);
            return received(new Arrival.FromFile(
                    source, at, name, ByteBuffer.wrap(payload).getLong(0)));
        }

        private Optional<Entry> fileComplete(ArrivalTime at, byte[] payload) {
            int head = RecordFormat.FILE_HEAD_BYTES;
            if (payload.length < head) {
                return Optional.empty();
            }
            long length = ByteBuffer.wrap(payload).getLong(1);
            String sha256 = HexFormat.of().formatHex(payload, 1 + Long.BYTES, head);
            String name = new String(payload, head, payload.length - head, StandardCharsets.UTF_8);
            return Arrival.Taken.of(payload[0])
                    .map(taken -> new Entry.Received(
                            new Arrival.FileComplete(source, at, name, taken, new Fingerprint(length, sha256))));
        }

        private static Optional<Entry> received(Arrival arrival) {
            return Optional.of(new Entry.Received(arrival));
        }
    }

    /** One thing that a capture file says. */
    sealed interface Entry {
        /**
         * The program began to write, at first or again after it had ended.
         *
         * @param source name of the source
         */
        record Started(String source, ArrivalTime at) implements Entry {}

        /** Something arrived. */
        record Received(Arrival arrival) implements Entry {}

        /**
         * Bytes of the file that are no whole record: it was cut there, or damaged.
         *
         * @param offset where they begin, from 0
         * @param bytes how many
         */
        record Damaged(long offset, long bytes) implements Entry {}

        /** The session was closed in good order. */
        record Ended(ArrivalTime at) implements Entry {}
    }
}
