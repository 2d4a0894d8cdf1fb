package org.nextpull.intake.csv;

import java.util.Arrays;

/** What stands between fields, the likeliest first. */
enum Separator {
    TAB('\t', "\t"),
    SEMICOLON(';', ";"),
    COMMA(',', ","),
    BAR('|', "|"),
    /** Runs of blanks, which are turned into tabs on the way. */
    BLANKS('\t', " ");

    private final char sign;
    private final String shown;

    Separator(char sign, String shown) {
        this.sign = sign;
        this.shown = shown;
    }

    /** As many fields as a line can be cut into. */
    static int mostFields(String line) {
        return Arrays.stream(values())
                .mapToInt(each ->
                        1 + (int) line.chars().filter(c -> c == each.sign).count())
                .max()
                .orElseThrow();
    }

    /** The character that the CSV reader splits at. */
    char sign() {
        return sign;
    }

    /** The separator as a description shows it. */
    String shown() {
        return shown;
    }
}
