package org.nextpull.compare;

import java.util.Locale;

/** What a comparison comes to. The order of the questions: same, more, less, else it cannot be told. */
public enum ComparisonVerdict {
    /** The interval lies within plus and minus the worth. */
    SAME,
    /** The interval lies wholly above zero. */
    MORE,
    /** The interval lies wholly below zero. */
    LESS,
    /** None of these, or the pulls that were planned are not all run. */
    CANNOT_TELL;

    /** As JSON writes it: {@code cannot-tell}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
