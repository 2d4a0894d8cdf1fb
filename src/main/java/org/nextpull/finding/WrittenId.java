package org.nextpull.finding;

import java.util.Locale;

/** A constant that JSON, files and the command line write as its name in small letters with hyphens: {@code cut-short}. */
public interface WrittenId {
    /** The name of the constant, as an enum has it. */
    String name();

    /** How it is written. */
    default String id() {
        return of(name());
    }

    /** How a constant is written that has that name. */
    static String of(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
