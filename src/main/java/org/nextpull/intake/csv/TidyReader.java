package org.nextpull.intake.csv;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import java.util.Optional;
import org.nextpull.intake.LineNumbers;

/**
 * Hands on text line by line, mended where a CSV reader would stumble: a quote that never closes would swallow all lines after it, so
 * the quotes of such a line are taken out; control characters go; where blanks separate, each run of them becomes one tab; a line of
 * endless length is left out. Line ends are kept, so that line numbers stay those of the source.
 */
final class TidyReader extends Reader {
    /** Lines that a quoted field may span, as in headers that were broken to fit a cell. */
    private static final int MOST_QUOTED_LINES = 4;

    private static final char END_OF_FILE = 0x1a;
    private static final int BUFFER_CHARS = 1 << 16;
    /** Characters of a line from which it is no row of a log. */
    static final int LONGEST_LINE = 1 << 20;

    private final Reader in;
    private final char separator;
    private final boolean blanks;
    private final LineNumbers unclosedQuotes = new LineNumbers();
    private final LineNumbers oddLines = new LineNumbers();
    private final LineNumbers tooLong = new LineNumbers();
    private char[] buffer;
    private int position;
    private int limit;
    private boolean ended;
    /** Why the source broke off; thrown once all that came before it is handed on. */
    private Optional<IOException> failure = Optional.empty();

    private long line;
    private char[] ready = new char[0];
    private int readyPosition;
    private int readyLimit;

    TidyReader(Reader in, Separator separator) {
        this(in, separator, 0);
    }

    /** Goes on in the middle of a text, behind so many lines. */
    TidyReader(Reader in, Separator separator, long linesBefore) {
        this.in = in;
        this.buffer = new char[BUFFER_CHARS];
        this.line = linesBefore;
        this.separator = separator.sign();
        this.blanks = separator == Separator.BLANKS;
    }

    /** Lines whose quotes were taken out. */
    LineNumbers unclosedQuotes() {
        return unclosedQuotes;
    }

    /** Lines whose control characters were taken out, but for page breaks and the mark that ends files of old systems. */
    LineNumbers oddLines() {
        return oddLines;
    }

    /** Lines that were left out for their length. */
    LineNumbers tooLong() {
        return tooLong;
    }

    @Override
    public int read(char[] target, int offset, int length) throws IOException {
        int written = 0;
        while (written < length) {
            if (readyPosition == readyLimit) {
                if ((written > 0 && position == limit) || !nextLine()) {
                    break;
                }
            }
            int count = Math.min(length - written, readyLimit - readyPosition);
            System.arraycopy(ready, readyPosition, target, offset + written, count);
            readyPosition += count;
            written += count;
        }
        if (written == 0 && failure.isPresent()) {
            throw failure.get();
        }
        return written == 0 && length > 0 ? -1 : written;
    }

    /** Makes the next line ready; false at the end. */
    private boolean nextLine() {
        int length = lineEnd(0);
        if (length == 0) {
            return false;
        }
        line++;
        if (length > LONGEST_LINE) {
            tooLong.add(line);
            length = passToEnd(length);
        }
        boolean odd = false;
        boolean strange = false;
        boolean quoted = false;
        for (int at = position; at < position + length; at++) {
            char c = buffer[at];
            quoted |= c == '"';
            if (c < ' ' && c != '\t' && c != '\n' && c != '\r') {
                odd = true;
                strange |= c != '\f' && c != END_OF_FILE;
            }
        }
        if (strange) {
            oddLines.add(line);
        }
        if (quoted && !isClosed(buffer, position, position + length, separator, blanks)) {
            int together = closingLines(length);
            if (together > 0) {
                hand(together, odd);
                return true;
            }
            unclosedQuotes.add(line);
            withoutQuotes(position, position + length);
        }
        hand(length, odd);
        return true;
    }

    /** Goes to the end of a line of any length; the length of its line break. */
    private int passToEnd(int firstLength) {
        int length = firstLength;
        while (length > 0 && !isBreak(buffer[position + length - 1])) {
            position += length;
            length = lineEnd(0);
        }
        int kept = length > 1 && buffer[position + length - 2] == '\r' ? 2 : Math.min(length, 1);
        position += length - kept;
        return kept;
    }

    private static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }

    private void hand(int length, boolean odd) {
        int from = position;
        int to = position + length;
        if (blanks || odd) {
            ready = new char[to - from];
            readyLimit = blanks ? joinBlanks(from, to) : dropOdd(from, to);
            readyPosition = 0;
        } else {
            ready = buffer;
            readyPosition = from;
            readyLimit = to;
        }
        position = to;
    }

    /** Length of the lines that together close a quote which the first line leaves open; 0 if the next few lines do not. */
    private int closingLines(int firstLength) {
        int length = firstLength;
        for (int more = 1; more < MOST_QUOTED_LINES; more++) {
            int next = lineEnd(length);
            if (next == length) {
                return 0;
            }
            length = next;
            if (isClosed(buffer, position, position + length, separator, blanks)) {
                line += more;
                return length;
            }
        }
        return 0;
    }

    /** Whether every quote in a stretch opens at the start of a field and closes at its end. */
    static boolean isClosed(char[] buffer, int from, int to, char separator, boolean blanks) {
        boolean inside = false;
        boolean fieldStart = true;
        for (int at = from; at < to; at++) {
            char c = buffer[at];
            if (inside) {
                if (c == '"') {
                    if (at + 1 < to && buffer[at + 1] == '"') {
                        at++;
                    } else if (at + 1 == to || isFieldEnd(buffer[at + 1], separator, blanks)) {
                        inside = false;
                    } else {
                        return false;
                    }
                }
            } else if (c == '"') {
                if (!fieldStart) {
                    return false;
                }
                inside = true;
            } else {
                fieldStart = isFieldEnd(c, separator, blanks);
            }
        }
        return !inside;
    }

    private static boolean isFieldEnd(char c, char separator, boolean blanks) {
        return c == separator || c == '\n' || c == '\r' || (blanks && c == ' ');
    }

    private void withoutQuotes(int from, int to) {
        for (int at = from; at < to; at++) {
            if (buffer[at] == '"') {
                buffer[at] = ' ';
            }
        }
    }

    private int dropOdd(int from, int to) {
        int written = 0;
        for (int at = from; at < to; at++) {
            char c = buffer[at];
            if (c >= ' ' || c == '\t' || c == '\n' || c == '\r') {
                ready[written++] = c;
            }
        }
        return written;
    }

    private int joinBlanks(int from, int to) {
        int written = 0;
        boolean inside = false;
        boolean pending = false;
        for (int at = from; at < to; at++) {
            char c = buffer[at];
            boolean blank = !inside && (c == ' ' || c == '\t');
            if (blank) {
                pending = written > 0;
                continue;
            }
            inside ^= c == '"';
            if (pending && c != '\n' && c != '\r') {
                ready[written++] = '\t';
            }
            pending = false;
            if (c >= ' ' || c == '\n' || c == '\r') {
                ready[written++] = c;
            }
        }
        return written;
    }

    /** Distance from {@link #position} to the end of the line that starts {@code start} behind it; reads on as needed. */
    private int lineEnd(int start) {
        int offset = start;
        while (true) {
            for (; position + offset < limit; offset++) {
                char c = buffer[position + offset];
                if (c == '\n') {
                    return offset + 1;
                }
                boolean followed = position + offset + 1 < limit;
                if (c == '\r' && !followed && !ended) {
                    break;
                }
                if (c == '\r') {
                    return offset + (followed && buffer[position + offset + 1] == '\n' ? 2 : 1);
                }
            }
            if (ended || offset - start > LONGEST_LINE) {
                return offset;
            }
            fill();
        }
    }

    private void fill() {
        if (position > 0) {
            System.arraycopy(buffer, position, buffer, 0, limit - position);
            limit -= position;
            position = 0;
        }
        if (limit == buffer.length) {
            buffer = Arrays.copyOf(buffer, buffer.length * 2);
        }
        try {
            int count = in.read(buffer, limit, buffer.length - limit);
            ended = count < 0;
            limit += Math.max(count, 0);
        } catch (IOException e) {
            ended = true;
            failure = Optional.of(e);
        }
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
