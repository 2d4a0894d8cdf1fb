package org.nextpull.intake.csv;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.Arrays;
import java.util.Optional;

/** Cuts a text into pieces of about one size, each at the end of a line. Safe for use by several threads, of which one cuts at a time. */
final class PieceCutter {
    private final InputStream in;
    private byte[] begun = new byte[0];
    private boolean ended;
    private Optional<IOException> failure = Optional.empty();

    PieceCutter(InputStream in) {
        this.in = in;
    }

    /** Whether all was cut. */
    synchronized boolean isAtEnd() {
        return ended && begun.length == 0;
    }

    /** Why the source broke off, where it did; what it gave of a line then is left out. */
    synchronized Optional<IOException> failure() {
        return failure;
    }

    /** Fills a piece with the next lines; without any at the end, and odd where a line is longer than any line of a log. */
    synchronized PlainPiece cut(PlainPiece piece) {
        while (piece.room() <= begun.length) {
            piece.grow();
        }
        System.arraycopy(begun, 0, piece.bytes(), 0, begun.length);
        int count = fill(piece, begun.length);
        int end = lastLineEnd(piece.bytes(), count);
        while (end == 0 && !ended && count <= TidyReader.LONGEST_LINE) {
            piece.grow();
            count = fill(piece, count);
            end = lastLineEnd(piece.bytes(), count);
        }
        if (ended && failure.isEmpty()) {
            end = count;
        }
        begun = Arrays.copyOfRange(piece.bytes(), end, count);
        piece.take(end, end == 0 && begun.length > 0 && failure.isEmpty());
        return piece;
    }

    /** Reads as much as there is room for; how many bytes there are then. */
    private int fill(PlainPiece piece, int from) {
        int count = from;
        try {
            while (!ended && count < piece.room()) {
                int read = in.read(piece.bytes(), count, piece.room() - count);
                ended = read < 0;
                count += Math.max(read, 0);
            }
        } catch (IOException e) {
            ended = true;
            failure = Optional.of(e);
        }
        return count;
    }

    /** Behind the last line that has ended for sure: a line feed may follow a return at the end. */
    private static int lastLineEnd(byte[] bytes, int count) {
        for (int at = count - 1; at >= 0; at--) {
            if (bytes[at] == '\n' || (bytes[at] == '\r' && at + 1 < count)) {
                return at + 1;
            }
        }
        return 0;
    }

    /** What was not cut. */
    synchronized InputStream rest() {
        InputStream behind = failure.isPresent() ? new Broken(failure.get()) : in;
        return new SequenceInputStream(new ByteArrayInputStream(begun), behind);
    }

    synchronized void close() throws IOException {
        ended = true;
        begun = new byte[0];
        in.close();
    }

    /** A source that breaks off again. */
    private static final class Broken extends InputStream {
        private final IOException why;

        Broken(IOException why) {
            this.why = why;
        }

        @Override
        public int read() throws IOException {
            throw why;
        }

        @Override
        public int read(byte[] into, int from, int most) throws IOException {
            throw why;
        }
    }
}
