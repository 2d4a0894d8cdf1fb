package org.nextpull.report.csv;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * One line of CSV by RFC 4180, section 2: cells with a comma, a quote or a line break stand in quotes, quotes are doubled, and the line
 * ends with CR LF. Text that a spreadsheet would run as a formula gets an apostrophe before it; numbers stay as they are.
 */
final class CsvLine {
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]*\\.?[0-9]+([eE][-+]?[0-9]+)?");
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private CsvLine() {}

    /** The line of these cells. */
    public static String of(List<String> cells) {
        return cells.stream().map(CsvLine::cell).collect(Collectors.joining(",", "", "\r\n"));
    }

    private static String cell(String text) {
        boolean isFormula = !text.isEmpty()
                && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0
                && !NUMBER.matcher(text).matches();
        String plain = isFormula ? "'" + text : text;
        boolean needsQuotes = plain.chars().anyMatch(letter -> letter == ',' || letter == '"' || letter < ' ');
        return needsQuotes ? '"' + plain.replace("\"", "\"\"") + '"' : plain;
    }
}
