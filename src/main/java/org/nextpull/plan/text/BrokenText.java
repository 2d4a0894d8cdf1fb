package org.nextpull.plan.text;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.tomlj.TomlParseError;

/** Text that is no TOML: what the parser says, with the keys that can be told to be wrong all the same. */
record BrokenText(List<TomlParseError> errors, String text, String file) {

    private static final Pattern DECIMAL_COMMA = Pattern.compile("=\\s*(-?\\d+),(\\d+)\\s*(?:#.*)?$");

    /** The parser's errors and those of single keys, in the order of the file. */
    List<Finding> merge(List<Finding> ofKeys) {
        if (isLog()) {
            return List.of(Finding.error(FindingCode.PLAN_IS_LOG, Place.inFile(file)));
        }
        List<String> lines = text.lines().toList();
        long trusted = firstBrokenHeader(lines);
        Stream<Finding> told =
                ofKeys.stream().filter(finding -> finding.place().line().orElse(Long.MAX_VALUE) < trusted);
        return Stream.concat(errors.stream().map(error -> syntax(error, lines)), told)
                .sorted(Comparator.<Finding>comparingLong(
                                finding -> finding.place().line().orElse(Long.MAX_VALUE))
                        .thenComparingInt(finding -> finding.place().column().orElse(Integer.MAX_VALUE)))
                .toList();
    }

    /** Below a broken header keys may have landed in the wrong table. */
    private long firstBrokenHeader(List<String> lines) {
        return errors.stream()
                .mapToInt(error -> error.position().line())
                .filter(line ->
                        line <= lines.size() && lines.get(line - 1).strip().startsWith("["))
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    /** The first line of a log has separators and neither a key nor a table. */
    private boolean isLog() {
        return text.lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .findFirst()
                .filter(line -> line.indexOf('=') < 0)
                .filter(line ->
                        line.chars().filter(sign -> ",;\t".indexOf(sign) >= 0).count() > 1)
                .isPresent();
    }

    private static Optional<Finding> comma(TomlParseError error, List<String> lines, Place place) {
        return lines.stream()
                .skip(error.position().line() - 1L)
                .findFirst()
                .map(DECIMAL_COMMA::matcher)
                .filter(Matcher::find)
                .map(number -> Finding.error(
                        FindingCode.PLAN_DECIMAL_COMMA,
                        place,
                        Detail.of("value", number.group(1) + "," + number.group(2)),
                        Detail.of("corrected", number.group(1) + "." + number.group(2))));
    }

    private Finding syntax(TomlParseError error, List<String> lines) {
        Place place = Place.atLine(file, error.position().line())
                .withColumn(error.position().column());
        return comma(error, lines, place)
                .orElseGet(() -> Finding.error(FindingCode.PLAN_SYNTAX, place, Detail.of("message", message(error))));
    }

    private static String message(TomlParseError error) {
        String said = String.valueOf(error.getMessage());
        return said.isEmpty() ? "not TOML" : said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1);
    }
}
