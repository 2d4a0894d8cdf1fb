package org.nextpull.intake;

import java.util.Locale;
import java.util.Set;

/**
 * Turns the characters of a cell into a number without making text of them. The result equals {@link Double#parseDouble} bit for bit:
 * digits that fit in 53 bits and a power of ten up to 18 are both exact, so one multiplication or division rounds once (Clinger 1990,
 * "How to read floating point numbers accurately"); everything else goes through {@code parseDouble} itself.
 *
 * <p>Not for use by several threads.
 */
public final class NumberReader {
    /** What a cell holds. */
    public enum Kind {
        NUMBER,
        /** Nothing, or a word for nothing such as {@code NaN}, {@code n/a} or {@code -}. */
        ABSENT,
        /** Something else. */
        TEXT
    }

    private static final long MOST_EXACT = 1L << 53;
    /** So many digits do not overflow, and a power of ten with so many zeros is exact. */
    private static final int MOST_DIGITS = 18;

    /** Stands for no separator, and for a character that is in no number. */
    private static final byte NO_SIGN = 0;

    private final byte[] plain = new byte[32];
    private final byte decimal;
    private final NumberStyle style;
    private final double[] powers = powers();
    private double value;
    private long groupedCells;

    public NumberReader(NumberStyle style) {
        this.style = style;
        this.decimal = (byte) style.decimal();
    }

    /** The number that {@link #read} found last; only after it has said {@link Kind#NUMBER}. */
    public double value() {
        return value;
    }

    /** The mark before the places of a number. */
    byte decimal() {
        return decimal;
    }

    /** Cells so far that had marks between thousands. */
    long groupedCells() {
        return groupedCells;
    }

    public Kind read(String cell) {
        return read(cell.toCharArray(), 0, cell.length());
    }

    /** Reads a cell; blanks around it do not matter. */
    public Kind read(char[] buffer, int offset, int length) {
        int start = offset;
        int end = offset + length;
        while (start < end && buffer[start] <= ' ') {
            start++;
        }
        while (end > start && buffer[end - 1] <= ' ') {
            end--;
        }
        if (start == end) {
            return Kind.ABSENT;
        }
        int count = end - start;
        if (count < plain.length) {
            for (int at = 0; at < count; at++) {
                char c = buffer[start + at];
                plain[at] = c < 0x80 ? (byte) c : NO_SIGN;
            }
            plain[count] = '\n';
            if (plain(plain, 0, NO_SIGN) == count) {
                return Kind.NUMBER;
            }
        }
        return readOther(new String(buffer, start, count));
    }

    /**
     * Reads a plain number up to the sign that ends its field, blanks around it aside: a separator, or a character of a line end.
     *
     * @param buffer with a line feed where reading stops at the latest
     * @param start where the number begins
     * @param separator what ends a field, no blank
     * @return where the field ends; -1 where it is no plain number, or one with more digits than are exact
     */
    public int plain(byte[] buffer, int start, byte separator) {
        int at = start;
        while (buffer[at] == ' ') {
            at++;
        }
        boolean negative = buffer[at] == '-';
        if (negative || buffer[at] == '+') {
            at++;
        }
        int firstDigit = at;
        int point = -1;
        long digits = 0;
        for (; ; at++) {
            byte c = buffer[at];
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
            } else if (c == decimal && point < 0) {
                point = at;
            } else {
                break;
            }
        }
        int signs = at - firstDigit - (point < 0 ? 0 : 1);
        if (signs == 0 || signs > MOST_DIGITS || digits > MOST_EXACT) {
            return -1;
        }
        double magnitude = shifted(digits, point < 0 ? 0 : at - point - 1);
        value = negative ? -magnitude : magnitude;
        while (buffer[at] == ' ') {
            at++;
        }
        return buffer[at] == separator || buffer[at] == '\n' || buffer[at] == '\r' ? at : -1;
    }

    /**
     * Digits with a decimal mark before the last of them.
     *
     * @param digits up to 2^53
     * @param places how many stand behind the mark, up to 18
     */
    double shifted(long digits, int places) {
        return digits / powers[places];
    }

    private Kind readOther(String cell) {
        if (AbsentWords.contains(cell)) {
            return Kind.ABSENT;
        }
        String plain = cell.replace('\u2212', '-');
        if (style.isGrouped(plain)) {
            groupedCells++;
            plain = style.withoutGrouping(plain);
        }
        plain = plain.replace(style.decimal(), '.');
        if (!isDecimal(plain)) {
            return Kind.TEXT;
        }
        double parsed = Double.parseDouble(plain);
        if (!Double.isFinite(parsed)) {
            return Kind.ABSENT;
        }
        value = parsed;
        return Kind.NUMBER;
    }

    /** Sign, digits with at most one point, exponent: what {@code parseDouble} takes beyond that is no number in a log. */
    private static boolean isDecimal(String text) {
        int at = !text.isEmpty() && (text.charAt(0) == '-' || text.charAt(0) == '+') ? 1 : 0;
        int digits = 0;
        boolean point = false;
        for (; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c >= '0' && c <= '9') {
                digits++;
            } else if (c == '.' && !point) {
                point = true;
            } else {
                break;
            }
        }
        if (digits == 0 || at == text.length()) {
            return digits > 0;
        }
        return isExponent(text.substring(at));
    }

    private static boolean isExponent(String text) {
        if (text.charAt(0) != 'e' && text.charAt(0) != 'E') {
            return false;
        }
        int at = text.length() > 1 && (text.charAt(1) == '-' || text.charAt(1) == '+') ? 2 : 1;
        return at < text.length()
                && text.length() - at <= 4
                && text.substring(at).chars().allMatch(c -> c >= '0' && c <= '9');
    }

    private static double[] powers() {
        double[] result = new double[MOST_DIGITS + 1];
        for (int exponent = 0; exponent < result.length; exponent++) {
            result[exponent] = Double.parseDouble("1e" + exponent);
        }
        return result;
    }

    /** Words that loggers and spreadsheets write where there is no value. */
    private static final class AbsentWords {
        private static final Set<String> WORDS = Set.of("""
                nan -nan +nan nan(ind) -nan(ind) -1.#ind 1.#qnan 1.#inf -1.#inf inf -inf +inf infinity -infinity na
                n/a #n/a n.a. n.v. k.a. nv nd n.d. s/d #nv #div/0! #ref! #value! #wert! #num! #zahl! #null! #name?
                null none nil void invalid ol over overrange off err error ? * - -- --- ---- ----- \u2013 \u2014
                \u221e -\u221e . ...
                """.strip().split("\\s+"));

        private AbsentWords() {}

        static boolean contains(String cell) {
            return WORDS.contains(cell.toLowerCase(Locale.ROOT)) || cell.isBlank();
        }
    }
}
