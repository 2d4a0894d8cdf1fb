package org.nextpull.intake;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
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

    /** The same byte eight times. */
    private static final long EACH = 0x0101010101010101L;

    private static final long HIGH_BITS = 0x8080808080808080L;

    private static final VarHandle WORDS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    /** So many bytes behind the end of what is read may be looked at. */
    public static final int SPARE = 3 * Long.BYTES;

    private final byte[] plain = new byte[32 + SPARE];
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
        if (count < plain.length - SPARE) {
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
     * @param buffer with a line feed where reading stops at the latest, and {@link #SPARE} bytes behind that
     * @param start where the number begins
     * @param separator what ends a field, no blank
     * @return where the field ends; -1 where it is no plain number, or one with more digits than are exact
     */
    public int plain(byte[] buffer, int start, byte separator) {
        int after = shortPlain(buffer, start, separator);
        return after < 0 ? signedPlain(buffer, start, separator) : after;
    }

    /**
     * Reads digits with at most one decimal sign among the next eight bytes, all at once: where the field ends with its eighth byte at the
     * latest, else -1. Eight digits are put together in pairs, fours and eights (Lemire 2019, "Number parsing at a gigabyte per second").
     */
    private int shortPlain(byte[] buffer, int start, byte separator) {
        long digits = (long) WORDS.get(buffer, start) ^ ('0' * EACH);
        long others = others(digits);
        int count = Long.numberOfTrailingZeros(others) / Byte.SIZE;
        if (count == 0 || count == Long.BYTES) {
            return -1;
        }
        int end = start + count;
        int places = 0;
        if (buffer[end] == decimal) {
            long behind = others & (others - 1);
            if (behind == 0) {
                return -1;
            }
            places = Long.numberOfTrailingZeros(behind) / Byte.SIZE - count - 1;
            long before = (1L << (Byte.SIZE * count)) - 1;
            digits = (digits & before) | ((digits >>> Byte.SIZE) & ~before);
            end += places + 1;
        }
        if (buffer[end] != separator && buffer[end] != '\n' && buffer[end] != '\r') {
            return -1;
        }
        value = number(digits, count + places) / powers[places];
        return end;
    }

    /** The high bit of each byte that is no digit, each differing from '0' by more than 9. */
    private static long others(long digits) {
        return (((digits & ~HIGH_BITS) + 0x76 * EACH) | digits) & HIGH_BITS;
    }

    /** The number that the first bytes make, one to eight digits from 0 to 9. */
    private static long number(long digits, int count) {
        // the first digit goes to the lowest byte but for zeros before it
        long all = digits << (Long.SIZE - Byte.SIZE * count);
        all = all * 10 + (all >>> 8);
        return ((all & 0xFF000000FFL) * (100 + (1_000_000L << 32))
                        + ((all >>> 16) & 0xFF000000FFL) * (1 + (10_000L << 32)))
                >>> 32;
    }

    /** Blanks, a sign, up to seven digits and as many behind a decimal sign, as most numbers have that are longer; else one digit at a time. */
    private int signedPlain(byte[] buffer, int start, byte separator) {
        int at = start;
        while (buffer[at] == ' ') {
            at++;
        }
        boolean negative = buffer[at] == '-';
        if (negative || buffer[at] == '+') {
            at++;
        }
        long whole = (long) WORDS.get(buffer, at) ^ ('0' * EACH);
        int count = Long.numberOfTrailingZeros(others(whole)) / Byte.SIZE;
        int point = at + count;
        if (count == 0 || count == Long.BYTES || buffer[point] != decimal) {
            return longPlain(buffer, at, negative, separator);
        }
        long part = (long) WORDS.get(buffer, point + 1) ^ ('0' * EACH);
        int places = Long.numberOfTrailingZeros(others(part)) / Byte.SIZE;
        int end = point + 1 + places;
        if (places == 0
                || places == Long.BYTES
                || (buffer[end] != separator && buffer[end] != '\n' && buffer[end] != '\r')) {
            return longPlain(buffer, at, negative, separator);
        }
        double magnitude = (number(whole, count) * (long) powers[places] + number(part, places)) / powers[places];
        value = negative ? -magnitude : magnitude;
        return end;
    }

    private int longPlain(byte[] buffer, int firstDigit, boolean negative, byte separator) {
        int at = firstDigit;
        int point = -1;
        long digits = 0;
        for (; ; at++) {
            byte c = buffer[at];
            int digit = c - '0';
            if (digit >= 0 && digit <= 9) {
                digits = digits * 10 + digit;
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
        double magnitude = point < 0 ? digits : digits / powers[at - point - 1];
        value = negative ? -magnitude : magnitude;
        while (buffer[at] == ' ') {
            at++;
        }
        return buffer[at] == separator || buffer[at] == '\n' || buffer[at] == '\r' ? at : -1;
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
