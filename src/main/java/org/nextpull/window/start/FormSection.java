package org.nextpull.window.start;

import java.util.List;

/**
 * A table of the plan as the form shows it.
 *
 * @param table its name in the plan, without number
 * @param title what the form calls it
 * @param purpose what it is for, a sentence
 * @param presence whether a plan may do without it
 * @param fields its keys
 */
record FormSection(String table, String title, String purpose, Presence presence, List<FormField> fields) {
    FormSection {
        fields = List.copyOf(fields);
    }

    /** Whether a plan may do without a table. */
    enum Presence {
        /** Its defaults hold where it is not written, so the form always shows it. */
        ALWAYS,
        /** Its presence means something: it can be switched on and off. */
        SWITCHED,
        /** There can be any number of them. */
        LISTED
    }
}
