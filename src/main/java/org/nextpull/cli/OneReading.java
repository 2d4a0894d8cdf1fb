package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.nextpull.report.Shown;
import org.nextpull.unit.Unit;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** One quantity that may be given by several options, each in a unit of its own, but only by one of them. */
final class OneReading {
    private final String what;
    private final List<String> given = new ArrayList<>();
    private double si;
    private double asGiven;

    OneReading(String what) {
        this.what = what;
    }

    /** Takes the value of an option, in the option's unit. */
    void take(String option, Unit unit, double value) {
        given.add(option);
        asGiven = value;
        si = unit.toSi(value);
    }

    boolean isGiven() {
        return !given.isEmpty();
    }

    /** The option that gave it. */
    String option() {
        return given.get(0);
    }

    /** The value in the project's unit; empty when no option gave it. */
    OptionalDouble value(CommandLine at) {
        if (given.size() > 1) {
            throw new ParameterException(
                    at, String.join(" and ", given) + " both give the " + what + "; give it once, in one unit.");
        }
        return given.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(si);
    }

    /** The value in the project's unit, which somebody must have given by one of the options. */
    double required(CommandLine at, String options) {
        return value(at)
                .orElseThrow(
                        () -> new ParameterException(at, "The " + what + " is missing; give it by " + options + "."));
    }

    /** The same, with a bound that the value must keep to. */
    double positive(CommandLine at, String options) {
        double value = required(at, options);
        check(at, number -> number > 0, "be above 0");
        return value;
    }

    /** Refuses a value in the project's unit that breaks a bound. */
    void checkSi(CommandLine at, Predicate<Double> bound, String must) {
        if (isGiven() && !bound.test(si)) {
            throw refused(at, must);
        }
    }

    /** Refuses a value, as it was given, that breaks a bound. */
    void check(CommandLine at, Predicate<Double> bound, String must) {
        if (isGiven() && !bound.test(asGiven)) {
            throw refused(at, must);
        }
    }

    private ParameterException refused(CommandLine at, String must) {
        return new ParameterException(at, option() + " must " + must + ", not " + Shown.plain(asGiven) + ".");
    }
}
