package org.nextpull.window.start;

import java.util.List;
import java.util.Optional;

/**
 * The form as it now stands.
 *
 * @param file name of the plan; empty for one that was never written
 * @param isChanged whether it differs from its file
 * @param parts its sections
 * @param loose what belongs to no field: keys that no plan has, and what is said of own blends and columns
 * @param kept what of the plan's text is kept without being shown
 */
record FormPage(Optional<String> file, boolean isChanged, List<FormPart> parts, List<Loose> loose, String kept) {
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
        return parts.stream().mapToLong(FormPart::errors).sum()
                + loose.stream().filter(one -> one.said().isError()).count();
    }

    /** The row of a key as findings name it. */
    Optional<FormRow> row(String id) {
        return parts.stream()
                .flatMap(part -> part.rows().stream())
                .filter(row -> row.id().equals(id))
                .findFirst();
    }
}
