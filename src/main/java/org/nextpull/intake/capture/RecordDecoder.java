package org.nextpull.intake.capture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.Fingerprint;

/** Turns a whole record, whose check has passed, into an entry; empty for one that this version cannot understand. */
record RecordDecoder(String source) {
    Optional<CaptureEntry> decode(ByteBuffer buffer, int start, int payloadBytes) {
        long sessionNs = buffer.getLong(start + RecordFormat.SESSION_AT);
        Optional<RecordFormat.Kind> kind = RecordFormat.Kind.of(buffer.get(start + RecordFormat.KIND_AT));
        if (sessionNs < 0 || kind.isEmpty()) {
            return Optional.empty();
        }
        ArrivalTime at = new ArrivalTime(sessionNs, buffer.getLong(start + RecordFormat.WALL_AT));
        byte[] payload = new byte[payloadBytes];
        buffer.get(start + RecordFormat.HEAD_BYTES, payload);
        return switch (kind.get()) {
            case STARTED -> Optional.of(new CaptureEntry.Started(new String(payload, StandardCharsets.UTF_8), at));
            case BYTES -> received(Chunk.copyOf(source, at, payload, payload.length));
            case CONNECTED -> received(new Arrival.Connected(source, at));
            case LOST -> lost(at, payload);
            case FROM_FILE -> fromFile(at, payload);
            case FILE_COMPLETE -> fileComplete(at, payload);
            case ENDED -> Optional.of(new CaptureEntry.Ended(at));
        };
    }

    private Optional<CaptureEntry> lost(ArrivalTime at, byte[] payload) {
        if (payload.length != 1 + Long.BYTES) {
            return Optional.empty();
        }
        long bytes = ByteBuffer.wrap(payload).getLong(1);
        return Arrival.Cause.of(payload[0])
                .map(cause -> new CaptureEntry.Received(new Arrival.Lost(source, at, cause, bytes)));
    }

    private Optional<CaptureEntry> fromFile(ArrivalTime at, byte[] payload) {
        if (payload.length < Long.BYTES) {
            return Optional.empty();
        }
        String name = new String(payload, Long.BYTES, payload.length - Long.BYTES, StandardCharsets.UTF_8);
        return received(
                new Arrival.FromFile(source, at, name, ByteBuffer.wrap(payload).getLong(0)));
    }

    private Optional<CaptureEntry> fileComplete(ArrivalTime at, byte[] payload) {
        int head = RecordFormat.FILE_HEAD_BYTES;
        if (payload.length < head) {
            return Optional.empty();
        }
        long length = ByteBuffer.wrap(payload).getLong(1);
        String sha256 = HexFormat.of().formatHex(payload, 1 + Long.BYTES, head);
        String name = new String(payload, head, payload.length - head, StandardCharsets.UTF_8);
        return Arrival.Taken.of(payload[0])
                .map(taken -> new CaptureEntry.Received(
                        new Arrival.FileComplete(source, at, name, taken, new Fingerprint(length, sha256))));
    }

    private static Optional<CaptureEntry> received(Arrival arrival) {
        return Optional.of(new CaptureEntry.Received(arrival));
    }
}
