package org.nextpull.report.html;

import java.util.Optional;

/**
 * What stands at the head of a sheet, as the caller knows it: the sheet itself has no clock.
 *
 * @param title the job in the operator's words
 * @param day when it was run or printed, as text
 * @param software name and version of the program
 */
public record Heading(Optional<String> title, Optional<String> day, Optional<String> software) {
    public static Heading none() {
        return new Heading(Optional.empty(), Optional.empty(), Optional.empty());
    }
}
