package org.nextpull.intake.csv;

import java.util.List;
import java.util.regex.Pattern;
import org.nextpull.intake.NumberStyle;

/** Counts what the cells of a source say about its decimal mark. */
final class NumberMarks {
    private static final Pattern EXACTLY_THREE = Pattern.compile("[+-]?[1-9]\\d{0,2}([.,])\\d{3}");
    private static final Pattern ONE_MARK = Pattern.compile("[+-]?\\d*([.,])\\d*(?:[eE][+-]?\\d+)?");
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
        if (text.length() < 2 || (text.indexOf('.') < 0 && text.indexOf(',') < 0)) {
            return;
        }
        if (EXACTLY_THREE.matcher(text).matches()) {
            doubtfulCommas += text.indexOf(',') >= 0 ? 1 : 0;
            return;
        }
        var one = ONE_MARK.matcher(text);
        var both = BOTH_MARKS.matcher(text);
        String mark = one.matches() ? one.group(1) : both.matches() ? both.group(1) : "";
        points += mark.equals(".") ? 1 : 0;
        commas += mark.equals(",") ? 1 : 0;
    }
}
