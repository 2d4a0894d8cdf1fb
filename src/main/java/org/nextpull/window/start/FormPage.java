package org.nextpull.window.start;

import java.util.List;
import java.util.Optional;
import org.nextpull.plan.text.PlanKey;
import org.nextpull.plan.text.PlanTable;

/**
 * The form as it now stands.
 *
 * @param file name of the plan; empty for one that was never written
 * @param isChanged whether it differs from its file
 * @param parts its sections
 * @param loose what belongs to no field: keys that no plan has, and what is said of own blends and columns
 * @param kept what of the plan's text is kept without being shown
 */
record FormPage(Optional<String> file, boolean isChanged, List<Part> parts, List<Loose> loose, String kept) {
    FormPage {
        parts = List.copyOf(parts);
        loose = List.copyOf(loose);
    }

    /**
     * Something that belongs to no field.
     *
     * @param said the sentence
     * @param removable the key or table that can be taken out to be rid of it
     */
    record Loose(Said said, Optional<String> removable) {}

    /** How many errors there are: with none, the plan can be used. */
    long errors() {
        return parts.stream().mapToLong(Part::errors).sum()
                + loose.stream().filter(one -> one.said().isError()).count();
    }

    /** Labels of the fields that must be filled in and that nobody came to yet. */
    List<String> missing() {
        return parts.stream()
                .flatMap(part -> part.rows().stream())
                .filter(Row::isMissing)
                .map(row -> row.field().label())
                .toList();
    }

    /** The row of a key as findings name it. */
    Optional<Row> row(String id) {
        return parts.stream()
                .flatMap(part -> part.rows().stream())
                .filter(row -> row.id().equals(id))
                .findFirst();
    }

    /**
     * A section as it now stands.
     *
     * @param table name of the table in the plan, with number; for a list without members, the name alone
     * @param section which section
     * @param isPresent whether the plan has the table
     * @param rows its fields; none while a table that can be switched is off
     * @param said what is wrong with the table as a whole
     */
    record Part(String table, PlanTable<?> section, boolean isPresent, List<Row> rows, List<Said> said) {
        Part {
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
                    + rows.stream().filter(Row::isMissing).count()
                    + rows.stream()
                            .flatMap(row -> row.said().stream())
                            .filter(Said::isError)
                            .count();
        }
    }

    /**
     * A field as it now stands.
     *
     * @param table name of its table in the plan, with number
     * @param field which field
     * @param typed what it holds; empty where the key is not written
     * @param otherwise what holds then; empty where there is no default
     * @param words what can be chosen; empty where anything can be typed
     * @param converted the value in the units that people read, where those are others than the plan's
     * @param isMissing whether it must be filled in and nobody came to it yet
     * @param said what is wrong with it or worth saying
     */
    record Row(
            String table,
            PlanKey<?> field,
            String typed,
            String otherwise,
            List<String> words,
            String converted,
            boolean isMissing,
            List<Said> said) {
        Row {
            words = List.copyOf(words);
            said = List.copyOf(said);
        }

        /** As findings name it. */
        String id() {
            return table + "." + field.name();
        }

        /** All that the field is about, in sentences: for whoever hears the page, and for the line below the form. */
        String spoken() {
            String unit = field.unitSign().isEmpty() ? "" : " In " + field.unitSign() + ".";
            String fallback = otherwise.isEmpty() ? " May be left empty." : " Left empty: " + otherwise + ".";
            String allowed = words.isEmpty() ? "" : " One of: " + String.join(", ", words) + ".";
            return field.label() + " (" + id() + "). " + field.help() + unit + allowed + fallback;
        }
    }

    /**
     * A sentence with how it is to be taken.
     *
     * @param isError whether nothing goes on with it
     * @param sentence for a person
     */
    record Said(boolean isError, String sentence) {}
}
