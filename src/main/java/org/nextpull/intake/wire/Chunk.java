package org.nextpull.intake.wire;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;

/** An immutable run of bytes as one reading found it, with the time at which the last of them was there. */
public final class Chunk implements Arrival {
    /** Longest run. */
    public static final int MOST_BYTES = 1 << 16;

    private final String source;
    private final ArrivalTime at;
    private final byte[] bytes;

    private Chunk(String source, ArrivalTime at, byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            throw new IllegalArgumentException("a run holds at most " + MOST_BYTES + " bytes: " + bytes.length);
        }
        this.source = source;
        this.at = at;
        this.bytes = bytes;
    }

    /** Copies the first {@code length} bytes of a buffer. */
    public static Chunk copyOf(String source, ArrivalTime at, byte[] buffer, int length) {
        return new Chunk(source, at, Arrays.copyOf(buffer, length));
    }

    /** The bytes of a text in UTF-8. */
    public static Chunk of(String source, ArrivalTime at, String text) {
        return new Chunk(source, at, text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public String source() {
        return source;
    }

    @Override
    public ArrivalTime at() {
        return at;
    }

    public int length() {
        return bytes.length;
    }

    /** Adds the bytes to a buffer that has room for them. */
    public void putInto(ByteBuffer target) {
        target.put(bytes);
    }

    /** A copy of the bytes. */
    public byte[] toArray() {
        return bytes.clone();
    }

    /** The bytes themselves, for the framer, which only reads them. */
    byte[] raw() {
        return bytes;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Chunk chunk
                && source.equals(chunk.source)
                && at.equals(chunk.at)
                && Arrays.equals(bytes, chunk.bytes);
    }

    @Override
    public int hashCode() {
        return Objects.hash(source, at, Arrays.hashCode(bytes));
    }

    @Override
    public String toString() {
        return "Chunk[" + source + ", " + at + ", " + bytes.length + " bytes]";
    }
}
