package org.nextpull.intake.wire;

/**
 * Lines of {@code name=value} pairs. Between pairs stands a semicolon, a tab, a bar, a comma or a blank, whichever of them the line has
 * first in this order; a value goes on up to the name of the next pair, so it may have a decimal comma.
 */
final class PairLines implements LineParser {
    private static final String SIGNS = ";\t|, ";
    private static final int MOST_NAME = 60;

    @Override
    public Result parse(byte[] line, int start, int end, LineFields values, Names names) {
        names.clear();
        if (line[start] == '#') {
            return Result.PASSED_OVER;
        }
        values.line(line, start, end);
        char separator = separator(values);
        int length = values.length();
        int equals = indexOf(values, '=', 0);
        int before = 0;
        while (equals >= 0) {
            int nameStart = nameStart(values, before, equals, separator);
            String name = new String(values.text(), nameStart, equals - nameStart).strip();
            int next = indexOf(values, '=', equals + 1);
            int valueEnd = next < 0 ? length : nameStart(values, equals + 1, next, separator);
            if (!isName(name)) {
                return Result.BROKEN;
            }
            names.add(name);
            values.add(equals + 1, trimmed(values, equals + 1, valueEnd, separator));
            before = equals + 1;
            equals = next;
        }
        return values.count() == 0 ? Result.BROKEN : Result.VALUES;
    }

    /** A letter first, no control characters, and no longer than a name is. */
    private static boolean isName(String name) {
        return !name.isEmpty()
                && name.length() <= MOST_NAME
                && Character.isLetter(name.charAt(0))
                && name.chars().noneMatch(c -> c < ' ' || c == '\ufffd' || (c >= 0x7f && c < 0xa0));
    }

    private static char separator(LineFields values) {
        for (int sign = 0; sign < SIGNS.length(); sign++) {
            if (indexOf(values, SIGNS.charAt(sign), 0) >= 0) {
                return SIGNS.charAt(sign);
            }
        }
        return ';';
    }

    private static int nameStart(LineFields values, int from, int equals, char separator) {
        int at = equals;
        while (at > from && values.charAt(at - 1) != separator) {
            at--;
        }
        return at;
    }

    private static int trimmed(LineFields values, int from, int end, char separator) {
        int at = end;
        while (at > from && (values.charAt(at - 1) == separator || values.charAt(at - 1) <= ' ')) {
            at--;
        }
        return at;
    }

    private static int indexOf(LineFields values, char sign, int from) {
        for (int at = from; at < values.length(); at++) {
            if (values.charAt(at) == sign) {
                return at;
            }
        }
        return -1;
    }
}
