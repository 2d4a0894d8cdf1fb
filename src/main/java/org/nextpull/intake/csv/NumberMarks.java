package org.nextpull.intake.csv;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.nextpull.intake.NumberStyle;

/** Counts what the cells of a source say about its decimal mark. */
final class NumberMarks {
    private static final Pattern WITH_EXPONENT = Pattern.compile("[+-]?\\d*([.,])\\d*[eE][+-]?\\d+");
    private static final Pattern BOTH_MARKS =
            Pattern.compile("[+-]?\\d{1,3}(?:[.,' \u00a0\u2009\u202f]\\d{3})+([.,])\\d+");

    /** Rows that are enough to see the mark. */
    private static final int ROWS = 2000;

    private int points;
    private int commas;
    private int doubtfulCommas;

    static NumberMarks of(List<TextRow> rows) {
        NumberMarks marks = new NumberMarks();
        rows.stream().limit(ROWS).forEach(row -> row.fields().forEach(marks::count));
        return marks;
    }

    /** The mark that most cells use; a point where none has any. */
    NumberStyle style() {
        return commas > points || (commas == points && doubtfulCommas > 0) ? NumberStyle.comma() : NumberStyle.point();
    }

    /** Whether commas could as well stand between thousands. */
    boolean isDoubtful() {
        return points == 0 && commas == 0 && doubtfulCommas > 0;
    }

    private void count(String cell) {
        String text = cell.strip();
        int mark = Math.max(text.indexOf('.'), text.indexOf(','));
        if (text.length() < 2 || mark < 0) {
            return;
        }
        boolean isComma = text.charAt(mark) == ',';
        int start = text.charAt(0) == '-' || text.charAt(0) == '+' ? 1 : 0;
        boolean isPlain = areDigits(text, start, mark) && areDigits(text, mark + 1, text.length());
        boolean mayPartThousands = text.length() - mark == 4 && mark - start >= 1 && mark - start <= 3;
        if (isPlain && mayPartThousands && text.charAt(start) != '0') {
            doubtfulCommas += isComma ? 1 : 0;
        } else if (isPlain) {
            count(isComma);
        } else {
            Stream.of(WITH_EXPONENT, BOTH_MARKS)
                    .map(form -> form.matcher(text))
                    .filter(Matcher::matches)
                    .findFirst()
                    .ifPresent(found -> count(found.group(1).equals(",")));
        }
    }

    private void count(boolean isComma) {
        points += isComma ? 0 : 1;
        commas += isComma ? 1 : 0;
    }

    private static boolean areDigits(String text, int start, int end) {
        for (int at = start; at < end; at++) {
            if (text.charAt(at) < '0' || text.charAt(at) > '9') {
                return false;
            }
        }
        return true;
    }
}
