package org.nextpull.cli;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * A number of the command line with its unit behind it: {@code 29.2inHg}, {@code 68F}, {@code "300 g/kWh"}.
 *
 * @param written as it was typed
 * @param number its number
 * @param symbol what stands behind the number; empty where nothing does
 */
record Amount(String written, double number, String symbol) {

    /** Whether its unit measures that. */
    boolean is(Quantity quantity) {
        return Unit.parse(symbol, quantity).isPresent();
    }

    /** The value in the project's unit, or wrong usage where the unit measures something else or is missing. */
    double si(CommandLine at, String option, Quantity quantity) {
        double si = Unit.parse(symbol, quantity)
                .map(unit -> unit.toSi(number))
                .orElseThrow(() -> new ParameterException(
                        at, option + " " + written + " lacks a unit; write one behind the number: " + units(quantity)));
        if (quantity == Quantity.TEMPERATURE && si < 0) {
            throw new ParameterException(at, option + " lies below absolute zero; check its unit.");
        }
        return si;
    }

    /** The same, above 0. */
    double positive(CommandLine at, String option, Quantity quantity) {
        double si = si(at, option, quantity);
        if (si <= 0) {
            throw new ParameterException(at, option + " must be above 0, not " + written + ".");
        }
        return si;
    }

    /** An amount that has to be given, above 0. */
    static double positive(CommandLine at, Wanted wanted, Optional<Amount> given) {
        return given.orElseThrow(() -> wanted.missing(at)).positive(at, wanted.option(), wanted.quantity());
    }

    /**
     * What a command asks for.
     *
     * @param what it is called
     * @param option that gives it
     * @param quantity that it is
     */
    record Wanted(String what, String option, Quantity quantity) {
        ParameterException missing(CommandLine at) {
            return new ParameterException(
                    at, "The " + what + " is missing; give it by " + option + ", in " + units(quantity));
        }
    }

    /** The units that may stand there, for people. */
    static String units(Quantity quantity) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.quantity() == quantity && unit != Unit.FRACTION)
                .map(Unit::symbol)
                .collect(Collectors.joining(", ", "", "."));
    }
}
