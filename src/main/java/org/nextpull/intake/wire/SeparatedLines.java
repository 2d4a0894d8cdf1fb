package org.nextpull.intake.wire;

/**
 * Lines of values with a separator: a tab, a semicolon, a bar, a comma or blanks, whichever of them the line has first in this order.
 * A comma beside one of the others is a decimal mark. Lines that begin with {@code #} are remarks.
 */
final class SeparatedLines implements LineParser {
    private static final char[] SIGNS = {'\t', ';', '|'};

    @Override
    public Result parse(byte[] line, int start, int end, LineFields values, Names names) {
        names.clear();
        if (line[start] == '#') {
            return Result.PASSED_OVER;
        }
        values.line(line, start, end);
        for (char sign : SIGNS) {
            if (has(values, sign)) {
                values.split(0, values.length(), sign);
                return Result.VALUES;
            }
        }
        if (has(values, ',') && !hasDecimalCommaAndBlanks(values)) {
            values.split(0, values.length(), ',');
        } else {
            splitAtBlanks(values);
        }
        return values.count() == 0 ? Result.PASSED_OVER : Result.VALUES;
    }

    private static boolean has(LineFields values, char sign) {
        for (int at = 0; at < values.length(); at++) {
            if (values.charAt(at) == sign) {
                return true;
            }
        }
        return false;
    }

    /** {@code 3000 180,5 0,87}: blanks between values, each comma between two digits. */
    private static boolean hasDecimalCommaAndBlanks(LineFields values) {
        boolean blankWithoutComma = false;
        for (int at = 0; at < values.length(); at++) {
            char c = values.charAt(at);
            char before = at == 0 ? ' ' : values.charAt(at - 1);
            char after = at + 1 == values.length() ? ' ' : values.charAt(at + 1);
            if (c == ',' && !(isDigit(before) && isDigit(after))) {
                return false;
            }
            blankWithoutComma |= c == ' ' && isDigit(before) && (isDigit(after) || after == '-');
        }
        return blankWithoutComma;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static void splitAtBlanks(LineFields values) {
        int from = -1;
        for (int at = 0; at < values.length(); at++) {
            boolean blank = values.charAt(at) <= ' ';
            if (!blank && from < 0) {
                from = at;
            } else if (blank && from >= 0) {
                values.add(from, at);
                from = -1;
            }
        }
        if (from >= 0) {
            values.add(from, values.length());
        }
    }
}
