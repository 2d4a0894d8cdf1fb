package org.nextpull.session;

import java.util.Locale;

/** Where the order of the pulls of a day comes from. */
public enum OrderFrom {
    /** An order column of a log, of the settings file or of a table. */
    ORDER_COLUMN,
    /** The dates and times of day in the logs. */
    CLOCK,
    /** The order in which files were named and pulls stand in them. */
    COMMAND_LINE;

    /** As JSON writes it: {@code order-column}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
