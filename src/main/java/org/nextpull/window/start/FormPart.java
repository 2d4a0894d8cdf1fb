package org.nextpull.window.start;

import java.util.List;
import org.nextpull.plan.text.PlanTable;

/**
 * A section as it now stands.
 *
 * @param table name of the table in the plan, with number; for a list without members, the name alone
 * @param section which section
 * @param isPresent whether the plan has the table
 * @param rows its fields; none while a table that can be switched is off
 * @param said what is wrong with the table as a whole
 */
record FormPart(String table, PlanTable<?> section, boolean isPresent, List<FormRow> rows, List<Said> said) {
    FormPart {
        rows = List.copyOf(rows);
        said = List.copyOf(said);
    }

    String title() {
        return table.endsWith("]")
                ? section.title() + " " + table.substring(table.lastIndexOf('[') + 1, table.length() - 1)
                : section.title();
    }

    /** How many errors are in it. */
    long errors() {
        return said.stream().filter(Said::isError).count()
                + rows.stream().filter(FormRow::isMissing).count()
                + rows.stream()
                        .flatMap(row -> row.said().stream())
                        .filter(Said::isError)
                        .count();
    }
}
