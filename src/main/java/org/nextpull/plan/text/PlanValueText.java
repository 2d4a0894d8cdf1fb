package org.nextpull.plan.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.nextpull.finding.WrittenId;
import org.nextpull.unit.Unit;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** Values as a plan writes them. */
final class PlanValueText {
    private static final int MOST_DIGITS = 17;
    private static final int LONGEST = 60;
    private static final int HIGHEST_CONTROL = 0x1f;
    private static final int DELETE = 0x7f;

    private PlanValueText() {}

    /** A value of a parsed plan, cut short when it is long. */
    static String value(Object value) {
        String whole = whole(value);
        return whole.length() <= LONGEST ? whole : whole.substring(0, LONGEST) + "...";
    }

    private static String whole(Object value) {
        if (value instanceof String text) {
            return text(text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...");
        }
        if (value instanceof Double number) {
            return Double.isFinite(number) ? number(number) : notFinite(number);
        }
        if (value instanceof TomlTable) {
            return "a table";
        }
        if (value instanceof TomlArray array) {
            return IntStream.range(0, Math.min(array.size(), LONGEST / 2))
                    .mapToObj(index -> array.get(index) instanceof TomlArray ? "[...]" : value(array.get(index)))
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        return String.valueOf(value);
    }

    private static String notFinite(double number) {
        if (Double.isNaN(number)) {
            return "nan";
        }
        return number > 0 ? "inf" : "-inf";
    }

    /** A finite number without exponent and without needless zeros. */
    static String number(double number) {
        BigDecimal exact = BigDecimal.valueOf(number).stripTrailingZeros();
        return exact.signum() == 0 ? "0" : exact.toPlainString();
    }

    /** A string in quotes, with the escapes that TOML 1.0 asks for. */
    static String text(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(point -> appendPoint(quoted, point));
        return quoted.append('"').toString();
    }

    private static void appendPoint(StringBuilder quoted, int point) {
        if (point == '"' || point == '\\') {
            quoted.append('\\').appendCodePoint(point);
        } else if (point <= HIGHEST_CONTROL || point == DELETE) {
            quoted.append(String.format(Locale.ROOT, "\\u%04x", point));
        } else if (point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE) {
            // half a character cannot be written in UTF-8
            quoted.append('\ufffd');
        } else {
            quoted.appendCodePoint(point);
        }
    }

    /** A key, bare where TOML allows it. */
    static String key(String key) {
        return key.matches("[A-Za-z0-9_-]+") ? key : text(key);
    }

    /** The word that a plan writes for a constant: {@code ENGINE_BRAKE} is {@code engine-brake}. */
    static String word(Enum<?> constant) {
        return WrittenId.of(constant.name());
    }

    /** The shortest decimal that, read in {@code unit}, gives {@code si} again. */
    static double shortest(Unit unit, double si) {
        double plain = unit.fromSi(si);
        for (int digits = 1; digits <= MOST_DIGITS; digits++) {
            double candidate = new BigDecimal(plain)
                    .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                    .doubleValue();
            if (unit.toSi(candidate) == si) {
                return candidate;
            }
        }
        return neighbour(unit, plain, si);
    }

    /** Where the conversion rounds both ways, the value may lie one step aside. */
    private static double neighbour(Unit unit, double plain, double si) {
        if (unit.toSi(Math.nextUp(plain)) == si) {
            return Math.nextUp(plain);
        }
        return unit.toSi(Math.nextDown(plain)) == si ? Math.nextDown(plain) : plain;
    }
}
