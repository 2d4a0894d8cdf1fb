package org.nextpull.intake.csv;

import java.util.List;

/**
 * A row as text.
 *
 * @param line line of the source where it starts, from 1
 * @param fields its fields
 */
record TextRow(long line, List<String> fields) {
    TextRow {
        fields = List.copyOf(fields);
    }

    /** The field of a column; empty text where the row ends before it. */
    String field(int index) {
        return index < fields.size() ? fields.get(index) : "";
    }

    /** Number of fields up to the last that is not blank. */
    int filled() {
        int count = fields.size();
        while (count > 0 && fields.get(count - 1).isBlank()) {
            count--;
        }
        return count;
    }

    boolean isComment() {
        String first = field(0).strip();
        return first.startsWith("#") || first.startsWith("//");
    }
}
