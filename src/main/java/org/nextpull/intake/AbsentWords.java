package org.nextpull.intake;

import java.util.Locale;
import java.util.Set;

/** Words that loggers and spreadsheets write where there is no value. */
final class AbsentWords {
    private static final Set<String> WORDS = Set.of(
            "nan",
            "-nan",
            "+nan",
            "nan(ind)",
            "-nan(ind)",
            "-1.#ind",
            "1.#qnan",
            "1.#inf",
            "-1.#inf",
            "inf",
            "-inf",
            "+inf",
            "infinity",
            "-infinity",
            "na",
            "n/a",
            "#n/a",
            "n.a.",
            "n.v.",
            "k.a.",
            "nv",
            "nd",
            "n.d.",
            "s/d",
            "#nv",
            "#div/0!",
            "#ref!",
            "#value!",
            "#wert!",
            "#num!",
            "#zahl!",
            "#null!",
            "#name?",
            "null",
            "none",
            "nil",
            "void",
            "invalid",
            "ol",
            "over",
            "overrange",
            "off",
            "err",
            "error",
            "?",
            "*",
            "-",
            "--",
            "---",
            "----",
            "-----",
            "\u2013",
            "\u2014",
            "\u221e",
            "-\u221e",
            ".",
            "...");

    private AbsentWords() {}

    static boolean contains(String cell) {
        return WORDS.contains(cell.toLowerCase(Locale.ROOT)) || cell.isBlank();
    }
}
