package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.nextpull.finding.FindingCode;
import org.nextpull.unit.Quantity;

/** Holds the catalogue of sentences and the codes of findings together. */
class FindingCatalogueTest {
    private static final Set<String> PLACE = Set.of("file", "line", "column", "key", "pull");
    private static final Set<String> OTHER_HINTS = Set.of("difference", "barometer", "altitude", "words");

    /** A deed: what an error asks its reader to do. */
    private static final Pattern DEED = Pattern.compile(
            "(?:^|[;.:,?] |so |or |and )(?:add|bring|change|check|choose|close|copy|drain|export|find|fit|fix|free|give|hold|log|look|lower|"
                    + "name|put|raise|read|remove|run|save|see|set|split|start|strap|use|write)\\b",
            Pattern.CASE_INSENSITIVE);

    @Test
    void everyCodeHasOneSentence() {
        Set<String> written = Catalogue.sentences().keySet();
        List<String> missing = Arrays.stream(FindingCode.values())
                .filter(code -> !written.contains(code.id()))
                .map(code -> code.id() + "="
                        + Catalogue.javadoc(code).orElse("What is wrong, with {details} in braces; what to do."))
                .toList();
        assertThat(missing)
                .as(
                        "Codes without a sentence. Add these lines to %s, in the order of FindingCode, and give the numbers "
                                + "their hints, such as {rpm:0} or {now:temperature}: its head lists them.%n%s%n",
                        Catalogue.FILE, String.join("\n", missing))
                .isEmpty();
    }

    @Test
    void aCountThatMayBeOneHasNoPluralBehindIt() {
        Pattern plural =
                Pattern.compile("\\{(?:count|rows|pulls|kept|fields|row_fields|header_fields)(?::0)?} [a-z]+s\\b");
        List<String> wrong = Catalogue.lines().stream()
                .filter(line -> plural.matcher(line.getValue()).find())
                .map(line -> line.getKey() + "=" + line.getValue())
                .toList();
        assertThat(wrong).isEmpty();
    }

    @Test
    void aKeyIsACodeAndStandsThereOnce() {
        Set<String> codes =
                Arrays.stream(FindingCode.values()).map(FindingCode::id).collect(Collectors.toSet());
        List<String> keys = Catalogue.lines().stream().map(Map.Entry::getKey).toList();
        assertThat(keys).doesNotHaveDuplicates();
        assertThat(keys.stream().filter(key -> !codes.contains(Catalogue.codeOf(key))))
                .as("keys in %s that are no code", Catalogue.FILE)
                .isEmpty();
    }

    @Test
    void aSlotIsADetailThatIsRaisedOrAPartOfThePlace() {
        String sources = Catalogue.sources();
        List<String> strangers = new ArrayList<>();
        Catalogue.sentences()
                .forEach((key, sentence) -> slots(sentence, 1)
                        .filter(name -> !PLACE.contains(name) && !sources.contains("\"" + name + "\""))
                        .forEach(name -> strangers.add(key + ": {" + name + "}")));
        assertThat(strangers).as("slots that nothing fills").isEmpty();
    }

    @Test
    void aHintIsOneThatTheHeadOfTheCatalogueExplains() {
        Set<String> quantities = Arrays.stream(Quantity.values())
                .map(quantity -> quantity.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
        List<String> strangers = new ArrayList<>();
        Catalogue.sentences()
                .forEach((key, sentence) -> slots(sentence, 2)
                        .filter(hint -> !quantities.contains(hint)
                                && !OTHER_HINTS.contains(hint)
                                && !hint.matches("[0-9]|quantity-of-[a-z_]+"))
                        .forEach(hint -> strangers.add(key + ": " + hint)));
        assertThat(strangers).isEmpty();
    }

    @Test
    void bracesAreWellFormed() {
        Catalogue.sentences()
                .forEach((key, sentence) -> assertThat(
                                Catalogue.SLOT.matcher(sentence).replaceAll(""))
                        .as(key)
                        .doesNotContain("{", "}", "\\"));
    }

    @Test
    void aSentenceStartsLargeAndEndsWithItsMark() {
        Catalogue.sentences().forEach((key, sentence) -> {
            assertThat(sentence).as(key).matches("(?s)[A-Z{\"\\[].*[.?]").doesNotContain("  ");
        });
    }

    @Test
    void anErrorSaysWhatToDo() {
        Map<String, String> sentences = Catalogue.sentences();
        Map<String, String> severities = Catalogue.severities();
        List<String> helpless = Arrays.stream(FindingCode.values())
                .filter(code -> severities.getOrDefault(code.name(), "").contains("error"))
                .map(code -> code.id() + ": " + sentences.get(code.id()))
                .filter(line -> !DEED.matcher(line).find())
                .toList();
        assertThat(helpless)
                .as("errors whose sentence asks for nothing; say what to do after a semicolon")
                .isEmpty();
    }

    @Test
    void noSentencePromisesWhatNobodyMeasured() {
        Catalogue.sentences()
                .forEach((key, sentence) ->
                        assertThat(ForbiddenWords.in(sentence)).as(key).isEmpty());
    }

    @Test
    void aVariantNamesADetailThatItsSentenceSpeaksOf() {
        Map<String, String> sentences = Catalogue.sentences();
        sentences.keySet().stream().filter(key -> key.contains(".without-")).forEach(key -> {
            String name = key.replaceFirst(".*\\.without-", "");
            assertThat(slots(sentences.getOrDefault(Catalogue.codeOf(key), ""), 1))
                    .as(key)
                    .contains(name);
            assertThat(slots(sentences.getOrDefault(key, ""), 1)).as(key).doesNotContain(name);
        });
    }

    private static Stream<String> slots(String sentence, int group) {
        Matcher slot = Catalogue.SLOT.matcher(sentence);
        List<String> found = new ArrayList<>();
        while (slot.find()) {
            if (slot.group(group) != null) {
                found.add(slot.group(group));
            }
        }
        return found.stream();
    }
}
