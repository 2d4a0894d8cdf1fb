package org.nextpull.intake;

/**
 * How a source writes numbers.
 *
 * @param decimal decimal mark, a point or a comma
 */
public record NumberStyle(char decimal) {
    private static final String MARKS = "'\u2019 \u00a0\u2009\u202f";

    /**
     * Accepts a point or a comma.
     *
     * @throws IllegalArgumentException for any other mark
     */
    public NumberStyle {
        if (decimal != '.' && decimal != ',') {
            throw new IllegalArgumentException("a decimal mark is a point or a comma: " + decimal);
        }
    }

    public static NumberStyle point() {
        return new NumberStyle('.');
    }

    public static NumberStyle comma() {
        return new NumberStyle(',');
    }

    /** The other mark, which may then only stand between thousands. */
    char grouping() {
        return decimal == '.' ? ',' : '.';
    }

    /**
     * Whether a cell has marks between thousands that can be nothing else: {@code 1,234.5}, {@code 1.234,5}, {@code 1 234,5}, {@code
     * 1'234.5}.
     */
    boolean isGrouped(String cell) {
        int point = cell.indexOf(decimal);
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
            } else if (isMark(c) && (mark == 0 ? run >= 1 && run <= 3 : c == mark && run == 3)) {
                mark = c;
                run = 0;
            } else {
                return false;
            }
        }
        return mark != 0 && run == 3;
    }

    /** The cell without its marks between thousands; only after {@link #isGrouped} has said yes. */
    String withoutGrouping(String cell) {
        StringBuilder result = new StringBuilder(cell.length());
        cell.chars().filter(c -> !isMark((char) c)).forEach(c -> result.append((char) c));
        return result.toString();
    }

    private boolean isMark(char c) {
        return c == grouping() || MARKS.indexOf(c) >= 0;
    }
}
