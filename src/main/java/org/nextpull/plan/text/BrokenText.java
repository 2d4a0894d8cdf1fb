package org.nextpull.plan.text;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.tomlj.TomlParseError;

/** Text that is no TOML: what the parser says, with the keys that can be told to be wrong all the same. */
record BrokenText(List<TomlParseError> errors, String text, String file) {

    /** The parser's errors and those of single keys, in the order of the file. */
    List<Finding> merge(List<Finding> ofKeys) {
        long trusted = firstBrokenHeader();
        Stream<Finding> told =
                ofKeys.stream().filter(finding -> finding.place().line().orElse(Long.MAX_VALUE) < trusted);
        return Stream.concat(errors.stream().map(this::syntax), told)
                .sorted(Comparator.<Finding>comparingLong(
                                finding -> finding.place().line().orElse(Long.MAX_VALUE))
                        .thenComparingInt(finding -> finding.place().column().orElse(Integer.MAX_VALUE)))
                .toList();
    }

    /** Below a broken header keys may have landed in the wrong table. */
    private long firstBrokenHeader() {
        List<String> lines = text.lines().toList();
        return errors.stream()
                .mapToInt(error -> error.position().line())
                .filter(line ->
                        line <= lines.size() && lines.get(line - 1).strip().startsWith("["))
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    private Finding syntax(TomlParseError error) {
        Place place = Place.atLine(file, error.position().line())
                .withColumn(error.position().column());
        return Finding.error(FindingCode.PLAN_SYNTAX, place, Detail.of("message", message(error)));
    }

    private static String message(TomlParseError error) {
        String said = String.valueOf(error.getMessage());
        return said.isEmpty() ? "not TOML" : said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1);
    }
}
