package org.nextpull.intake.wire;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The fields of one line, without making text of them. Used again for each line; not for use by several threads. */
final class LineFields {
    private char[] text = new char[256];
    private int[] starts = new int[32];
    private int[] ends = new int[32];
    private int count;
    private int length;

    /** Takes the characters of a new line; fields are added next. Bytes that are no ASCII are read as UTF-8. */
    void line(byte[] bytes, int start, int end) {
        count = 0;
        length = end - start;
        if (length > text.length) {
            text = new char[Math.max(length, 2 * text.length)];
        }
        for (int index = 0; index < length; index++) {
            byte b = bytes[start + index];
            if (b < 0) {
                decode(bytes, start, end);
                return;
            }
            text[index] = (char) b;
        }
    }

    private void decode(byte[] bytes, int start, int end) {
        char[] decoded = new String(bytes, start, end - start, StandardCharsets.UTF_8).toCharArray();
        length = decoded.length;
        System.arraycopy(decoded, 0, text, 0, length);
    }

    /** Characters of the line. */
    int length() {
        return length;
    }

    char charAt(int index) {
        return text[index];
    }

    char[] text() {
        return text;
    }

    /** Adds the field from {@code start} to before {@code end}, less quotes and blanks around it. */
    void add(int start, int end) {
        int from = start;
        int to = end;
        while (from < to && text[from] <= ' ') {
            from++;
        }
        while (to > from && text[to - 1] <= ' ') {
            to--;
        }
        if (to - from >= 2 && text[from] == '"' && text[to - 1] == '"') {
            from++;
            to--;
        }
        if (count == starts.length) {
            starts = Arrays.copyOf(starts, 2 * count);
            ends = Arrays.copyOf(ends, 2 * count);
        }
        starts[count] = from;
        ends[count++] = to;
    }

    /** Splits the line from {@code start} to before {@code end} at a sign. */
    void split(int start, int end, char separator) {
        int from = start;
        for (int at = start; at < end; at++) {
            if (text[at] == separator) {
                add(from, at);
                from = at + 1;
            }
        }
        add(from, end);
    }

    int count() {
        return count;
    }

    int start(int field) {
        return starts[field];
    }

    int length(int field) {
        return ends[field] - starts[field];
    }

    String field(int field) {
        return new String(text, starts[field], length(field));
    }

    List<String> all() {
        List<String> result = new ArrayList<>(count);
        for (int field = 0; field < count; field++) {
            result.add(field(field));
        }
        return result;
    }

    /** Whether no character of the line is a control or a replaced one, tabs aside. */
    boolean isPrinting() {
        for (int at = 0; at < length; at++) {
            char c = text[at];
            if ((c < ' ' && c != '\t') || (c >= 0x7f && c < 0xa0) || c == '\ufffd') {
                return false;
            }
        }
        return true;
    }

    /** The line, shortened, as a person may read it: what is no printing character is a question mark. */
    String readable(int most) {
        StringBuilder result = new StringBuilder();
        for (int at = 0; at < Math.min(length, most); at++) {
            char c = text[at];
            result.append(c < ' ' || (c >= 0x7f && c < 0xa0) || c == '\ufffd' ? '?' : c);
        }
        return length > most ? result + "..." : result.toString();
    }
}
