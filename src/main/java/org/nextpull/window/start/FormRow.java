package org.nextpull.window.start;

import java.util.List;
import org.nextpull.plan.text.PlanKey;

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
record FormRow(
        String table,
        PlanKey<?> field,
        String typed,
        String otherwise,
        List<String> words,
        String converted,
        boolean isMissing,
        List<Said> said) {
    FormRow {
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
