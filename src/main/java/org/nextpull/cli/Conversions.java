package org.nextpull.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.nextpull.fuel.LambdaScale;
import org.nextpull.report.Shown;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads numbers, numbers with a unit and days of the command line; what is none is wrong usage, never a fault. So is a number that nothing
 * in an engine, its fuel or its weather measures in any unit: without bounds here, sums further in would run out of what a double holds.
 */
final class Conversions {
    private static final double MOST = 1e9;
    private static final double LEAST = 1e-9;
    private static final Pattern NUMBER =
            Pattern.compile("\\s*([-+]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]{1,4})?)(.*)");

    private Conversions() {}

    static void register(CommandLine line) {
        line.registerConverter(Double.class, Conversions::number);
        line.registerConverter(double.class, Conversions::number);
        line.registerConverter(Amount.class, Conversions::amount);
        line.registerConverter(WeatherReadings.Named.class, Conversions::named);
        line.registerConverter(LocalDate.class, Conversions::day);
    }

    private static double number(String text) {
        Matcher number = matched(text);
        if (!number.group(2).isBlank()) {
            throw noNumber(text);
        }
        return bounded(number.group(1));
    }

    private static Amount amount(String text) {
        Matcher number = matched(text);
        return new Amount(
                text.strip(), bounded(number.group(1)), number.group(2).strip());
    }

    private static WeatherReadings.Named named(String text) {
        int mark = text.indexOf('=');
        if (mark < 0) {
            throw new TypeConversionException("'" + text + "' is not a reading; write one such as air=31C");
        }
        return new WeatherReadings.Named(text.substring(0, mark).strip(), amount(text.substring(mark + 1)));
    }

    private static Matcher matched(String text) {
        Matcher number = NUMBER.matcher(text);
        if (!number.matches() || number.group(2).startsWith(",")) {
            throw noNumber(text);
        }
        return number;
    }

    private static TypeConversionException noNumber(String text) {
        String hint = text.matches("[-+]?[0-9]+,[0-9]+.*")
                ? "; write a point for the decimals: " + text.replace(',', '.')
                : "; write it in digits, such as 98.5";
        return new TypeConversionException("'" + text + "' is not a number" + hint);
    }

    private static double bounded(String text) {
        double value = Double.parseDouble(text);
        if (Math.abs(value) > MOST) {
            throw new TypeConversionException("'" + text + "' is too large a number; nothing here is above 1e9");
        }
        if (value != 0 && Math.abs(value) < LEAST) {
            throw new TypeConversionException("'" + text + "' is too small a number; write 0, or one of at least 1e-9");
        }
        return value;
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeException none) {
            throw new TypeConversionException(
                    "'" + text + "' is not a date; write year, month and day as in 2026-05-09");
        }
    }

    /** No engine burns outside this. */
    private static final Span BURNS = Span.of(0.2, 5);

    static Lambda lambda(CommandLine at, String option, double value) {
        if (BURNS.contains(value)) {
            return Lambda.of(value);
        }
        String hint = value > BURNS.high() ? "; an air-fuel ratio is turned into lambda by fuel convert --afr" : "";
        throw new ParameterException(
                at,
                option + " " + Shown.plain(value) + " is not a lambda that burns; give " + Shown.plain(BURNS.low())
                        + " to " + Shown.plain(BURNS.high()) + hint + ".");
    }

    static Lambda lambda(CommandLine at, double airFuelRatio, LambdaScale scale) {
        double lambda = airFuelRatio / scale.ratioAtLambdaOne();
        if (BURNS.contains(lambda)) {
            return scale.lambda(airFuelRatio);
        }
        String hint = BURNS.contains(airFuelRatio) ? "; if it is a lambda, give it by --lambda" : "";
        throw new ParameterException(
                at,
                "--afr " + Shown.plain(airFuelRatio) + " on a scale of " + Shown.plain(scale.ratioAtLambdaOne())
                        + " means no mixture that burns" + hint + ".");
    }
}
