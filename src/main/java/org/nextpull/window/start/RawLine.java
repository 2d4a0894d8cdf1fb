package org.nextpull.window.start;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The last whole line that a source sent, as it came, with signs that nobody can read written out. Counts the lines. */
final class RawLine {
    private static final int LONGEST = 400;

    private final byte[] line = new byte[LONGEST];
    private int length;
    private String last = "";
    private long lines;

    void take(byte[] bytes) {
        for (byte one : bytes) {
            if (one == '\n' || one == '\r') {
                end();
            } else if (length < LONGEST) {
                line[length++] = one;
            }
        }
    }

    private void end() {
        if (length > 0) {
            last = readable(new String(line, 0, length, StandardCharsets.UTF_8)) + (length == LONGEST ? " ..." : "");
            lines++;
        }
        length = 0;
    }

    private static String readable(String text) {
        StringBuilder readable = new StringBuilder();
        text.codePoints().forEach(point -> {
            if (point == '\t') {
                readable.append('\u2192');
            } else if (Character.isISOControl(point) || point == '\ufffd') {
                readable.append(String.format(Locale.ROOT, "<%02x>", point));
            } else {
                readable.appendCodePoint(point);
            }
        });
        return readable.toString();
    }

    /** What came last; while no line has ended yet, what has come of it. */
    String text() {
        return last.isEmpty() ? readable(new String(line, 0, length, StandardCharsets.UTF_8)) : last;
    }

    long lines() {
        return lines;
    }
}
