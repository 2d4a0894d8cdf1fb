package org.nextpull.intake.csv;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import java.util.Optional;
import org.nextpull.intake.NumberReader;
import org.nextpull.intake.SampleRows;

/**
 * The fast lane: rows of numbers without a quote, read straight from the characters as live lines are. It stops before the first line that
 * it does not know; the CSV library goes on from there, and makes the same of every line that both can read.
 */
final class PlainRows {
    private static final int BUFFER_CHARS = 1 << 16;
    private static final int LONGEST_LINE = 1 << 20;

    /** Answers of {@link #row} that are no place in the buffer. */
    private static final int UNFINISHED = -1;

    private static final int ODD = -2;

    private final Reader in;
    private final Head head;
    private final SampleRows rows;
    private final char separator;
    private final boolean firstIsText;
    /** One character longer than what is ever read into it: a line feed stands behind the last. */
    private char[] buffer = new char[BUFFER_CHARS];

    private int position;
    private int limit;
    private boolean ended;
    private Optional<IOException> failure = Optional.empty();
    private long line;
    private boolean odd;

    /**
     * Prepares to read the rows below a head.
     *
     * @param firstIsText whether the first column holds words
     */
    PlainRows(Reader in, Head head, SampleRows rows, boolean firstIsText) {
        this.in = in;
        this.head = head;
        this.rows = rows;
        this.separator = head.separator().sign();
        this.firstIsText = firstIsText;
        this.buffer[0] = '\n';
        this.odd = head.separator() == Separator.BLANKS || hasNumberForName(head);
    }

    private static boolean hasNumberForName(Head head) {
        NumberReader numbers = new NumberReader(head.style());
        return numbers.read(head.header().field(0)) == NumberReader.Kind.NUMBER
                || numbers.read(head.units().field(0)) == NumberReader.Kind.NUMBER;
    }

    /** Whether it stopped before a line that it does not know, not at the end. */
    boolean isOdd() {
        return odd;
    }

    /** Why the source broke off, where it did. */
    Optional<IOException> failure() {
        return failure;
    }

    /** Lines that were read. */
    long lines() {
        return line;
    }

    /** Reads the next line; false at the end and before a line that it does not know. */
    boolean next() {
        if (line == 0 && !odd) {
            odd = !passHead();
        }
        while (!odd && (position < limit || !ended)) {
            int end = row();
            if (end >= 0) {
                pass(end);
                return true;
            }
            odd = end == ODD || !(ended || fill());
            if (end == UNFINISHED && ended && failure.isPresent()) {
                position = limit;
            }
        }
        return false;
    }

    /** What was not read, as a text whose lines go on being counted. */
    TidyReader rest() {
        return new TidyReader(in, head.separator(), Arrays.copyOfRange(buffer, position, limit), line);
    }

    /** Goes behind the line whose end stands there. */
    private void pass(int end) {
        position = Math.min(limit, end + lineBreak(end));
        line++;
    }

    private int lineBreak(int end) {
        return buffer[end] == '\r' && end + 1 < limit && buffer[end + 1] == '\n' ? 2 : 1;
    }

    /** Goes behind the head; stays where it is when a quote in the head does not close on its line. */
    private boolean passHead() {
        int at = 0;
        for (long heads = 0; heads < head.lastHeadLine(); heads++) {
            int end = at;
            while (lineEnd(end) < 0) {
                if (!isLineEnd(end)) {
                    end++;
                } else if (ended || !fill()) {
                    return false;
                }
            }
            if (!TidyReader.isClosed(buffer, at, end, separator, false)) {
                return false;
            }
            at = end + lineBreak(end);
        }
        position = Math.min(at, limit);
        line = head.lastHeadLine();
        return true;
    }

    /** Reads the row at the position; where its line ends, or why it cannot be read. */
    private int row() {
        if (isLineEnd(position)) {
            return lineEnd(position);
        }
        rows.begin(line + 1);
        boolean known = false;
        boolean tooWide = false;
        int index = 0;
        int at = position;
        while (true) {
            int after = rows.plainField(index, buffer, at, limit, separator);
            if (after < 0) {
                if (!known) {
                    int end = knownEnd(at);
                    if (end < 0) {
                        return end;
                    }
                    known = true;
                }
                after = at;
                while (buffer[after] != separator && !isLineEnd(after)) {
                    after++;
                }
                if (index == 0 && isHeadAgain(at, after)) {
                    return ODD;
                }
                tooWide |= index >= head.header().fields().size() && !new String(buffer, at, after - at).isBlank();
                rows.field(index, buffer, at, after - at);
            }
            index++;
            if (isLineEnd(after)) {
                int end = lineEnd(after);
                if (end >= 0 && !isComment()) {
                    if (tooWide || index < head.leastFields()) {
                        rows.reject();
                    }
                    rows.end();
                }
                return end;
            }
            at = after + 1;
        }
    }

    private boolean isLineEnd(int at) {
        return buffer[at] == '\n' || buffer[at] == '\r';
    }

    /** A place if a line ends there; {@link #UNFINISHED} if it does not, or more characters have to come to be sure of it. */
    private int lineEnd(int at) {
        boolean whole = ended && failure.isEmpty();
        boolean sure = isLineEnd(at) && (whole || (at < limit && (buffer[at] == '\n' || at + 1 < limit)));
        return sure ? at : UNFINISHED;
    }

    /** Where the line ends that goes on there, if it has neither a quote nor a control character. */
    private int knownEnd(int from) {
        int at = from;
        while (!isLineEnd(at)) {
            if (buffer[at] == '"' || (buffer[at] < ' ' && buffer[at] != '\t')) {
                return ODD;
            }
            at++;
        }
        return lineEnd(at);
    }

    private boolean isComment() {
        return buffer[position] == '#' || (buffer[position] == '/' && buffer[position + 1] == '/');
    }

    /** Whether a first field is as in the header or the row of units, or a word where no words are. */
    private boolean isHeadAgain(int from, int to) {
        String field = new String(buffer, from, to - from);
        return field.equals(head.header().field(0))
                || (field.equals(head.units().field(0))
                        && !head.units().fields().isEmpty())
                || (!firstIsText && to > from && Character.isLetter(buffer[from]));
    }

    /** Reads on; false where a line is longer than any line of a log. */
    private boolean fill() {
        if (limit - position >= LONGEST_LINE) {
            return false;
        }
        System.arraycopy(buffer, position, buffer, 0, limit - position);
        limit -= position;
        position = 0;
        if (limit + 1 >= buffer.length) {
            buffer = Arrays.copyOf(buffer, buffer.length * 2);
        }
        try {
            int count = in.read(buffer, limit, buffer.length - 1 - limit);
            ended = count < 0;
            limit += Math.max(count, 0);
        } catch (IOException e) {
            ended = true;
            failure = Optional.of(e);
        }
        buffer[limit] = '\n';
        return true;
    }
}
