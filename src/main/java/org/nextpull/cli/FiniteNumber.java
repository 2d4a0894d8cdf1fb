package org.nextpull.cli;

import picocli.CommandLine.TypeConversionException;

/**
 * Reads a number of the command line. What is no number, or one that nothing in an engine, its fuel or its weather measures in any of
 * the units that can be given, is wrong usage, never a fault: without bounds here, sums further in would run out of what a double holds.
 */
final class FiniteNumber {
    private static final double MOST = 1e9;
    private static final double LEAST = 1e-9;

    private FiniteNumber() {}

    static double of(String text) {
        if (!text.strip().matches("[-+]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][-+]?[0-9]{1,4})?")) {
            throw new TypeConversionException("'" + text + "' is not a number" + hint(text));
        }
        double value = Double.parseDouble(text.strip());
        if (Math.abs(value) > MOST) {
            throw new TypeConversionException("'" + text + "' is too large a number; nothing here is above 1e9");
        }
        if (value != 0 && Math.abs(value) < LEAST) {
            throw new TypeConversionException("'" + text + "' is too small a number; write 0, or one of at least 1e-9");
        }
        return value;
    }

    private static String hint(String text) {
        return text.matches("[-+]?[0-9]+,[0-9]+")
                ? "; write a point for the decimals: " + text.replace(',', '.')
                : "; write it in digits, such as 98.5";
    }
}
