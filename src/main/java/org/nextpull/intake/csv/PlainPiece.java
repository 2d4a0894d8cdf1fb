package org.nextpull.intake.csv;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.nextpull.intake.NumberReader;
import org.nextpull.intake.WrittenRows;

/**
 * A piece of a log that ends with a line, its rows read straight from the bytes. It stops before the first line that it does not know: one
 * with a quote, a control character or a letter beyond ASCII, or one that is no row. Of lines that it knows the CSV library makes the same.
 */
final class PlainPiece {
    private final Head head;
    private final boolean firstIsText;
    private final byte separator;
    private final WrittenRows rows;
    private final WrittenRows.Shape shape;
    /** A line feed stands behind the last byte. */
    private byte[] bytes;

    private int length;
    private int position;
    private int lines;
    private boolean odd;

    /**
     * Prepares to read.
     *
     * @param rows where its rows go
     * @param size bytes of a piece
     */
    PlainPiece(Head head, boolean firstIsText, WrittenRows rows, int size) {
        this.head = head;
        this.firstIsText = firstIsText;
        this.separator = (byte) head.separator().sign();
        this.rows = rows;
        this.shape = new WrittenRows.Shape(
                separator, head.leastFields(), head.header().fields().size());
        this.bytes = new byte[size + 1];
    }

    /** Whether nothing in the head of a log hinders it. */
    static boolean canRead(Head head) {
        NumberReader numbers = new NumberReader(head.style());
        return head.separator() != Separator.BLANKS
                && numbers.read(head.header().field(0)) != NumberReader.Kind.NUMBER
                && numbers.read(head.units().field(0)) != NumberReader.Kind.NUMBER;
    }

    /** Where bytes are to be put, as many as there is room for. */
    byte[] bytes() {
        return bytes;
    }

    int room() {
        return bytes.length - 1;
    }

    /** Makes room for twice as many bytes. */
    void grow() {
        bytes = Arrays.copyOf(bytes, 2 * bytes.length);
    }

    /** The rows that were read, numbered from the first line of the piece. */
    WrittenRows rows() {
        return rows;
    }

    /** Lines that were read. */
    int lines() {
        return lines;
    }

    /** Whether it stopped before a line that it does not know. */
    boolean isOdd() {
        return odd;
    }

    /**
     * Takes bytes that were put.
     *
     * @param count how many, from the start of a line on
     * @param isOdd whether they are no lines to be read
     */
    void take(int count, boolean isOdd) {
        position = 0;
        length = count;
        bytes[count] = '\n';
        rows.clear();
        lines = 0;
        odd = isOdd;
    }

    boolean isEmpty() {
        return length == 0 && !odd;
    }

    /** All bytes, read or not. */
    byte[] whole() {
        return Arrays.copyOf(bytes, length);
    }

    /** What was not read. */
    byte[] rest() {
        return Arrays.copyOfRange(bytes, position, length);
    }

    /** Reads the lines of the first piece of a log, which the head must be in; a head that does not close its quotes is not known. */
    void readFirst() {
        int at = 0;
        for (long line = 0; line < head.lastHeadLine() && !odd; line++) {
            int end = lineEnd(at);
            char[] text = text(at, end).toCharArray();
            odd = end >= length
                    || !TidyReader.isClosed(
                            text, 0, text.length, head.separator().sign(), false);
            at = behind(end);
        }
        if (!odd) {
            position = Math.min(length, at);
            lines = (int) head.lastHeadLine();
            read();
        }
    }

    /** Reads the lines. */
    void read() {
        while (position < length && !odd) {
            int before = rows.rows();
            position = rows.plainRows(lines + 1, bytes, position, length, shape);
            lines += rows.rows() - before;
            if (position < length) {
                int end = isLineEnd(position) ? position : row(lines + 1);
                odd = end < 0;
                if (!odd) {
                    position = Math.min(length, behind(end));
                    lines++;
                }
            }
        }
        rows.settle();
    }

    private boolean isLineEnd(int at) {
        return bytes[at] == '\n' || bytes[at] == '\r';
    }

    private int lineEnd(int from) {
        int at = from;
        while (!isLineEnd(at)) {
            at++;
        }
        return at;
    }

    private int behind(int lineEnd) {
        return lineEnd + (bytes[lineEnd] == '\r' && lineEnd + 1 < length && bytes[lineEnd + 1] == '\n' ? 2 : 1);
    }

    /** Reads the row at the position; where its line ends, or -1 where it is not known. */
    private int row(int line) {
        rows.begin(line);
        boolean known = false;
        boolean tooWide = false;
        int at = position;
        for (int index = 0; ; index++) {
            int after = rows.plainField(index, bytes, at, separator);
            if (after < 0) {
                if (!known && !isKnown(at)) {
                    return -1;
                }
                known = true;
                after = at;
                while (bytes[after] != separator && !isLineEnd(after)) {
                    after++;
                }
                if (index == 0 && isHeadAgain(at, after)) {
                    return -1;
                }
                tooWide |= index >= head.header().fields().size()
                        && !text(at, after).isBlank();
                if (rows.isRead(index)) {
                    rows.field(index, text(at, after));
                }
            }
            if (isLineEnd(after)) {
                end(index + 1, tooWide);
                return after;
            }
            at = after + 1;
        }
    }

    private void end(int fields, boolean tooWide) {
        boolean isComment = bytes[position] == '#' || (bytes[position] == '/' && bytes[position + 1] == '/');
        if (!isComment) {
            if (tooWide || fields < head.leastFields()) {
                rows.reject();
            }
            rows.end();
        }
    }

    private String text(int from, int to) {
        return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
    }

    /** Whether the rest of a line has neither a quote nor a control character nor a letter beyond ASCII. */
    private boolean isKnown(int from) {
        int at = from;
        while (!isLineEnd(at)) {
            if (bytes[at] == '"' || (bytes[at] < ' ' && bytes[at] != '\t')) {
                return false;
            }
            at++;
        }
        return true;
    }

    /** Whether a first field is as in the header or the row of units, or a word where no words are. */
    private boolean isHeadAgain(int from, int to) {
        String field = text(from, to);
        return field.equals(head.header().field(0))
                || (field.equals(head.units().field(0))
                        && !head.units().fields().isEmpty())
                || (!firstIsText && to > from && Character.isLetter(field.charAt(0)));
    }
}
