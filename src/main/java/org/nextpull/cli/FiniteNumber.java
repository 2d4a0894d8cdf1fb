package org.nextpull.cli;

import picocli.CommandLine.TypeConversionException;

/** Reads a number of the command line; what is no finite number is wrong usage, never a fault. */
final class FiniteNumber {
    private FiniteNumber() {}

    static double of(String text) {
        if (!text.strip().matches("[-+]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][-+]?[0-9]{1,4})?")) {
            throw new TypeConversionException("'" + text + "' is not a number" + hint(text));
        }
        double value = Double.parseDouble(text.strip());
        if (!Double.isFinite(value)) {
            throw new TypeConversionException("'" + text + "' is too large a number");
        }
        return value;
    }

    private static String hint(String text) {
        return text.matches("[-+]?[0-9]+,[0-9]+")
                ? "; write a point for the decimals: " + text.replace(',', '.')
                : "; write it in digits, such as 98.5";
    }
}
