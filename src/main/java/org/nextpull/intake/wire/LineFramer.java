package org.nextpull.intake.wire;

import java.util.Arrays;

/**
 * Cuts a stream of bytes into lines. A line ends at a line feed, a carriage return or both; empty lines are no lines. Bytes come in runs
 * of any size and a line may be spread over many of them. Holds at most {@link #MOST_LINE_BYTES} of an unfinished line, whatever
 * arrives.
 */
final class LineFramer {
    /** No logger writes a longer line; more without an end is not lines. */
    static final int MOST_LINE_BYTES = 8192;

    private static final byte LINE_FEED = '\n';
    private static final byte RETURN = '\r';

    private byte[] held = new byte[256];
    private int heldBytes;
    private boolean overlong;

    /** Takes the lines. The buffer is only valid during the call. */
    public interface Lines {
        /**
         * A finished line.
         *
         * @param buffer holds the line from {@code start} to before {@code end}
         * @param bytesAfter bytes of the same run that arrived after the line's end
         */
        void line(byte[] buffer, int start, int end, int bytesAfter);

        /** A line was longer than {@link #MOST_LINE_BYTES}; it is dropped up to its end. */
        void overlong();
    }

    /** Takes a run of bytes. */
    void feed(Chunk chunk, Lines lines) {
        byte[] bytes = chunk.raw();
        int start = 0;
        for (int at = 0; at < bytes.length; at++) {
            byte b = bytes[at];
            if (b == LINE_FEED || b == RETURN) {
                end(bytes, start, at, lines);
                start = at + 1;
            }
        }
        hold(bytes, start, lines);
    }

    /** Bytes of the line that has not ended yet. */
    int heldBytes() {
        return heldBytes;
    }

    /** Forgets the unfinished line. */
    void restart() {
        heldBytes = 0;
        overlong = false;
    }

    private void end(byte[] bytes, int start, int end, Lines lines) {
        int after = bytes.length - end - 1;
        if (overlong) {
            restart();
        } else if (heldBytes > 0) {
            if (append(bytes, start, end, lines)) {
                int length = heldBytes;
                heldBytes = 0;
                lines.line(held, 0, length, after);
            } else {
                restart();
            }
        } else if (end - start > MOST_LINE_BYTES) {
            lines.overlong();
        } else if (end > start) {
            lines.line(bytes, start, end, after);
        }
    }

    private void hold(byte[] bytes, int start, Lines lines) {
        if (start < bytes.length && !overlong) {
            append(bytes, start, bytes.length, lines);
        }
    }

    private boolean append(byte[] bytes, int start, int end, Lines lines) {
        int length = heldBytes + end - start;
        if (length > MOST_LINE_BYTES) {
            overlong = true;
            heldBytes = 0;
            lines.overlong();
            return false;
        }
        if (length > held.length) {
            held = Arrays.copyOf(held, Math.max(length, 2 * held.length));
        }
        System.arraycopy(bytes, start, held, heldBytes, end - start);
        heldBytes = length;
        return true;
    }
}
