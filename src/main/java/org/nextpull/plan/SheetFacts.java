package org.nextpull.plan;

import java.util.Optional;

/**
 * Words for the sheet, table {@code [sheet]}.
 *
 * @param customer whom the sheet is for
 * @param vehicle what was on the dyno
 * @param place where
 * @param operator who ran it
 * @param reference the number of the order
 */
public record SheetFacts(
        Optional<String> customer,
        Optional<String> vehicle,
        Optional<String> place,
        Optional<String> operator,
        Optional<String> reference) {
    public static SheetFacts defaults() {
        return new SheetFacts(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
