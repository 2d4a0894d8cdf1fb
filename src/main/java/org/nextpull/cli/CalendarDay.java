package org.nextpull.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.TypeConversionException;

/** Reads a day of the command line; what is none is wrong usage, never a fault. */
final class CalendarDay {
    private CalendarDay() {}

    static LocalDate of(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeException none) {
            throw new TypeConversionException("'" + text + "' is no day; write year, month and day as in 2026-05-09");
        }
    }
}
