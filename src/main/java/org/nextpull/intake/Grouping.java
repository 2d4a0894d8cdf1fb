package org.nextpull.intake;

/** Marks between thousands: understood where they can be nothing else, {@code 1,234.5}, {@code 1.234,5}, {@code 1 234,5}, {@code 1'234.5}. */
final class Grouping {
    private static final String MARKS = "'\u2019 \u00a0\u2009\u202f";

    private Grouping() {}

    static boolean isGrouped(String cell, NumberStyle style) {
        int point = cell.indexOf(style.decimal());
        String whole = point < 0 ? cell : cell.substring(0, point);
        if (whole.startsWith("-") || whole.startsWith("+")) {
            whole = whole.substring(1);
        }
        char mark = 0;
        int run = 0;
        for (int at = 0; at < whole.length(); at++) {
            char c = whole.charAt(at);
            if (c >= '0' && c <= '9') {
                run++;
            } else if (isMark(c, style) && (mark == 0 ? run >= 1 && run <= 3 : c == mark && run == 3)) {
                mark = c;
                run = 0;
            } else {
                return false;
            }
        }
        return mark != 0 && run == 3;
    }

    /** The cell without its marks between thousands; only after {@link #isGrouped} has said yes. */
    static String without(String cell, NumberStyle style) {
        StringBuilder result = new StringBuilder(cell.length());
        cell.chars().filter(c -> !isMark((char) c, style)).forEach(c -> result.append((char) c));
        return result.toString();
    }

    private static boolean isMark(char c, NumberStyle style) {
        return c == style.grouping() || MARKS.indexOf(c) >= 0;
    }
}
