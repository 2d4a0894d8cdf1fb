package org.nextpull.intake.csv;

import java.util.List;
import org.nextpull.intake.NumberStyle;

/**
 * What the first part of a text says about the whole.
 *
 * @param separator what stands between fields
 * @param style how numbers are written
 * @param styleDoubtful whether its commas could as well stand between thousands
 * @param header the header, a field a column
 * @param units the row of units; no fields where there is none
 * @param lastHeadLine last line that is not data
 * @param rows data rows of the first part
 * @param leastFields fewest fields of a whole row
 * @param complete whether {@code rows} are all rows of the text
 */
record Head(
        Separator separator,
        NumberStyle style,
        boolean styleDoubtful,
        TextRow header,
        TextRow units,
        long lastHeadLine,
        List<TextRow> rows,
        int leastFields,
        boolean complete) {
    Head {
        rows = List.copyOf(rows);
    }

    /** The cells of a column in the first part. */
    List<String> column(int index) {
        return rows.stream().map(row -> row.field(index)).toList();
    }
}
