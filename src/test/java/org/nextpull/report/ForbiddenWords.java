package org.nextpull.report;

import java.util.List;
import java.util.regex.Pattern;

/** Words that the tool never says of an engine: they promise what nobody measured. */
final class ForbiddenWords {
    private static final Pattern NEVER = Pattern.compile(
            "\\bsafe(ly|ty)?\\b|cannot knock|(will|does) not knock|\\bno knock\\b(?! channel)|knock[- ]free|lower octane|"
                    + "guarantee|harmless|certainly|always holds|crank (power|torque) from wheel",
            Pattern.CASE_INSENSITIVE);

    private ForbiddenWords() {}

    /** The forbidden words in a text. */
    static List<String> in(String text) {
        return NEVER.matcher(text).results().map(found -> found.group()).toList();
    }
}
