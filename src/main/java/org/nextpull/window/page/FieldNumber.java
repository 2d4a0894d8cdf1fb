package org.nextpull.window.page;

import java.util.Optional;
import org.nextpull.report.EntryText;

/**
 * What a field of a question holds that takes a number: a value, or nothing, or what is wrong.
 *
 * @param value the number; empty for an empty field
 * @param fault what is wrong with it
 */
public record FieldNumber(Optional<Double> value, Optional<String> fault) {

    /** A number with a point or a comma; an empty field is no number and no fault. */
    public static FieldNumber of(String field, String text) {
        String plain = text.strip().replace(',', '.');
        if (plain.isEmpty()) {
            return new FieldNumber(Optional.empty(), Optional.empty());
        }
        return plain.matches("[+-]?\\d{1,6}(\\.\\d{1,6})?")
                ? new FieldNumber(Optional.of(Double.valueOf(plain)), Optional.empty())
                : new FieldNumber(Optional.empty(), Optional.of(EntryText.noNumber(field, text.strip())));
    }
}
