package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.Action;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.ChosenBy;
import org.nextpull.finding.FindingCode;

/** Holds the handbook pages on findings and on advice together with what the program says. */
class HandbookTest {
    private static final Path PAGES = Path.of("src/site/markdown");
    private static final Path FINDINGS = Path.of("src/site/markdown/findings.md");
    private static final Path ADVICE = Path.of("src/site/markdown/advice.md");
    private static final Path FRESH = Path.of("target/findings.md");

    @Test
    void thePageOfFindingsListsEveryCodeWithItsSentence() throws IOException {
        String page = Files.readString(FINDINGS);
        List<String> rows = new ArrayList<>();
        Matcher row = Pattern.compile(
                        "(?m)^\\| (.*) \\| (?:note|warning|error)(?: or (?:note|warning|error))* \\| `([a-z0-9-]+)` \\|$")
                .matcher(page);
        while (row.find()) {
            rows.add(row.group(2) + "=" + row.group(1));
        }
        List<String> wanted = Arrays.stream(FindingCode.values())
                .map(code -> code.id() + "=" + words(code))
                .toList();
        Files.createDirectories(Path.of("target"));
        Files.writeString(FRESH, freshPage(page));
        assertThat(rows)
                .as("rows of %s; a page made anew lies in %s: look at its severities and copy it", FINDINGS, FRESH)
                .containsExactlyElementsOf(wanted);
    }

    /** The sentence without the hints that only the program needs. */
    private static String words(FindingCode code) {
        String sentence = Catalogue.sentences().getOrDefault(code.id(), "");
        return Catalogue.SLOT.matcher(sentence).replaceAll("{$1}").replace("[[", "\\[\\[");
    }

    private static String freshPage(String page) {
        StringBuilder fresh = new StringBuilder(page.substring(0, page.indexOf("\n## ") + 1));
        Map<String, String> severities = Catalogue.severities();
        for (Map.Entry<String, List<FindingCode>> group : Catalogue.groups().entrySet()) {
            String title = group.getKey();
            fresh.append("## ")
                    .append(title.substring(0, 1).toUpperCase(java.util.Locale.ROOT))
                    .append(title.substring(1))
                    .append("\n\n| sentence | severity | code |\n|---|---|---|\n");
            for (FindingCode code : group.getValue()) {
                Matcher before = Pattern.compile("(?m)\\| ([a-z ]+) \\| `" + code.id() + "` \\|$")
                        .matcher(page);
                String raised = severities.getOrDefault(code.name(), "");
                String severity = before.find() ? before.group(1) : raised.isEmpty() ? "warning" : raised;
                fresh.append("| %s | %s | `%s` |%n".formatted(words(code), severity, code.id()));
            }
            fresh.append('\n');
        }
        return fresh.toString().stripTrailing() + "\n";
    }

    @Test
    void thePageOfAdviceExplainsEveryCodeActionAndChoice() throws IOException {
        String page = Files.readString(ADVICE);
        for (AdviceCode code : AdviceCode.values()) {
            assertThat(page).containsPattern("(?m)^\\| `" + code.id() + "` \\| .{20,} \\|$");
        }
        for (Action action : Action.values()) {
            assertThat(page).containsPattern("(?m)^\\| `" + action.id() + "` \\| .{20,} \\|$");
        }
        for (ChosenBy by : ChosenBy.values()) {
            assertThat(page).containsPattern("(?m)^\\| `" + by.id() + "` \\| .{20,} \\|$");
        }
        Matcher row = Pattern.compile("(?m)^\\| `([a-z-]+)` \\|").matcher(page);
        int rows = 0;
        while (row.find()) {
            rows++;
        }
        assertThat(rows)
                .as("rows of codes, actions and choices, none too many")
                .isEqualTo(AdviceCode.values().length + Action.values().length + ChosenBy.values().length);
    }

    @Test
    void everyLinkLeadsSomewhereAndEveryPageStandsInTheMenuOfTheSite() throws IOException {
        String menu = Files.readString(Path.of("src/site/site.xml"));
        Pattern link = Pattern.compile("]\\((?!https?:)([^)#]*)(?:#([^)]*))?\\)");
        List<String> broken = new ArrayList<>();
        for (Path page : pages()) {
            String name =
                    PAGES.relativize(page).toString().replace(".md", ".html").replace('\\', '/');
            if (!name.startsWith("decisions/0") && !menu.contains("href=\"" + name + "\"")) {
                broken.add(name + " is not in the menu");
            }
            Matcher found = link.matcher(Files.readString(page).replaceAll("(?s)```.*?```|`[^`\n]*`", ""));
            while (found.find()) {
                Path to = found.group(1).isEmpty() ? page : target(page, found.group(1));
                boolean there = Files.isRegularFile(to)
                        && (found.group(2) == null
                                || Files.readString(to).contains("<a id=\"" + found.group(2) + "\">"));
                if (!there) {
                    broken.add(page + ": " + found.group());
                }
            }
        }
        Matcher item = Pattern.compile("href=\"([^\"]+)\\.html\"").matcher(menu);
        while (item.find()) {
            if (!Files.isRegularFile(PAGES.resolve(item.group(1) + ".md"))) {
                broken.add("the menu names " + item.group(1));
            }
        }
        assertThat(broken).isEmpty();
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.walk(PAGES)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    /** Where a link of a page leads; the site has the pictures beside its pages. */
    private static Path target(Path page, String link) {
        return link.startsWith("images/")
                ? Path.of("src/site/resources", link)
                : page.resolveSibling(link).normalize();
    }

    @Test
    void troubleshootingNamesFindingsThatThereAre() throws IOException {
        List<String> codes =
                Arrays.stream(FindingCode.values()).map(FindingCode::id).toList();
        List<String> advice =
                Arrays.stream(AdviceCode.values()).map(AdviceCode::id).toList();
        Matcher named = Pattern.compile("`([a-z]+(?:-[a-z]+)*)`(?=[^|]*\\|\\n)")
                .matcher(Files.readString(PAGES.resolve("troubleshooting.md")));
        int count = 0;
        while (named.find()) {
            count++;
            assertThat(codes.contains(named.group(1)) || advice.contains(named.group(1)))
                    .as(named.group(1))
                    .isTrue();
        }
        assertThat(count).isGreaterThan(25);
    }

    @Test
    void thePageOnSafetyHasEveryCaution() throws IOException {
        assertThat(Files.readString(PAGES.resolve("safety.md"))).contains(Cautions.sentences());
    }

    @Test
    void thePagesPromiseNothing() throws IOException {
        assertThat(ForbiddenWords.in(Files.readString(FINDINGS))).isEmpty();
        assertThat(ForbiddenWords.in(Files.readString(ADVICE))).isEmpty();
    }
}
