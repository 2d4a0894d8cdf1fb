package org.nextpull.advice;

import java.util.Locale;
import org.nextpull.unit.Temperature;

/**
 * What to wait for before the next pull.
 *
 * @param condition what that is out of its window
 * @param now its value
 * @param want the nearest value inside the window
 * @param atLeastSeconds shortest time to wait
 */
public record WaitFor(Condition condition, Temperature now, Temperature want, double atLeastSeconds) {

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
}
