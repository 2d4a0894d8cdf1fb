package org.nextpull.advice;

import java.util.Locale;

/** A temperature that must be right before a pull. */
public enum Condition {
    COOLANT,
    OIL,
    INLET_AIR,
    EXHAUST;

    /** As JSON writes it: {@code inlet_air}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
