package org.nextpull.intake.capture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;

/** Makes records, one for each arrival. */
record RecordEncoder(int fileId) {
    private static final int LOST_BYTES = 9;

    ByteBuffer started(String source, ArrivalTime at) {
        return record(RecordFormat.Kind.STARTED, at, source.getBytes(StandardCharsets.UTF_8));
    }

    ByteBuffer ended(ArrivalTime at) {
        return record(RecordFormat.Kind.ENDED, at, new byte[0]);
    }

    /** The record of an arrival; empty (no bytes) for one that is not kept. */
    ByteBuffer received(Arrival arrival) {
        if (arrival instanceof Chunk chunk) {
            return bytes(chunk);
        }
        if (arrival instanceof Arrival.Connected connected) {
            return record(RecordFormat.Kind.CONNECTED, connected.at(), new byte[0]);
        }
        if (arrival instanceof Arrival.Lost lost) {
            ByteBuffer payload = ByteBuffer.allocate(LOST_BYTES);
            payload.put(lost.why().code()).putLong(lost.bytes());
            return record(RecordFormat.Kind.LOST, lost.at(), payload.array());
        }
        if (arrival instanceof Arrival.FromFile file) {
            byte[] name = file.file().getBytes(StandardCharsets.UTF_8);
            ByteBuffer payload = ByteBuffer.allocate(Long.BYTES + name.length);
            payload.putLong(file.atByte()).put(name);
            return record(RecordFormat.Kind.FROM_FILE, file.at(), payload.array());
        }
        if (arrival instanceof Arrival.FileComplete complete) {
            byte[] name = complete.file().getBytes(StandardCharsets.UTF_8);
            ByteBuffer payload = ByteBuffer.allocate(RecordFormat.FILE_HEAD_BYTES + name.length);
            payload.put(complete.taken().code()).putLong(complete.print().length());
            payload.put(HexFormat.of().parseHex(complete.print().sha256())).put(name);
            return record(RecordFormat.Kind.FILE_COMPLETE, complete.at(), payload.array());
        }
        return ByteBuffer.allocate(0);
    }

    private ByteBuffer bytes(Chunk chunk) {
        ByteBuffer buffer = begin(RecordFormat.Kind.BYTES, chunk.at(), chunk.length());
        chunk.putInto(buffer);
        return finish(buffer);
    }

    private ByteBuffer record(RecordFormat.Kind kind, ArrivalTime at, byte[] payload) {
        ByteBuffer buffer = begin(kind, at, payload.length);
        buffer.put(payload);
        return finish(buffer);
    }

    private ByteBuffer begin(RecordFormat.Kind kind, ArrivalTime at, int payloadBytes) {
        return ByteBuffer.allocate(RecordFormat.HEAD_BYTES + payloadBytes + RecordFormat.CHECK_BYTES)
                .putInt(RecordFormat.MARKER)
                .putInt(fileId)
                .put(kind.code())
                .putInt(payloadBytes)
                .putLong(at.sessionNs())
                .putLong(at.wallMs());
    }

    private static ByteBuffer finish(ByteBuffer buffer) {
        int payloadBytes = buffer.position() - RecordFormat.HEAD_BYTES;
        return buffer.putInt(RecordFormat.check(buffer, 0, payloadBytes)).flip();
    }
}
