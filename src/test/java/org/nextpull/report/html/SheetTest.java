package org.nextpull.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.report.Cautions;
import org.nextpull.report.Shown;
import org.nextpull.session.Replay;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.SampleDays;

class SheetTest {
    private static final Sheet.Heading HEADING =
            new Sheet.Heading(Optional.of("Timing on pump fuel"), Optional.of("2026-05-02"), Optional.of("nextpull 0"));

    @TempDir
    private static Path folder = Path.of("unset");

    private static String demo = "";
    private static String hostile = "";

    @BeforeAll
    static void makeSheets() throws IOException {
        demo = Sheet.of(Days.demo(folder), new Shown(UnitSystem.METRIC), HEADING);
        hostile = Sheet.of(Days.hostile(folder), new Shown(UnitSystem.US));
        Files.createDirectories(Path.of("target/sheets"));
        Files.writeString(Path.of("target/sheets/demo.html"), demo);
        Files.writeString(Path.of("target/sheets/hostile.html"), hostile);
    }

    private static List<String> all(String pattern, String text) {
        return Pattern.compile(pattern, Pattern.DOTALL)
                .matcher(text)
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void theSheetHasItsPartsInTheOrderOfWhatMattersMost() {
        assertThat(all("<h2>(.*?)</h2>", demo))
                .containsSubsequence(
                        "The answer in full",
                        "Job",
                        "Curves",
                        "Pulls",
                        "Conditions and correction",
                        "How it was found, pull by pull",
                        "To repeat this elsewhere",
                        "Cautions");
        assertThat(demo).contains("<h1>Timing on pump fuel</h1>", "2026-05-02", "ISO 1585");
    }

    private static String front(String sheet) {
        return sheet.substring(sheet.indexOf("<section class=\"front\">"), sheet.indexOf("<h2 class=\"annex\">"))
                .replaceAll("<style>.*?</style>|<[^>]*>|\\s+", " ")
                .replaceAll(" +", " ");
    }

    @Test
    void theFirstPageSaysForWhomWhatCameOutAndWhatItWasBefore() {
        assertThat(front(hostile)).contains(" customer ").contains(" place cell 2 ");
        assertThat(front(demo))
                .doesNotContain("customer")
                .contains(
                        " dyno engine dyno, torque at the crank ",
                        "Final setting: ",
                        " MBT is the least spark advance that makes best torque.",
                        "before at rpm after at rpm change",
                        "average torque, N·m",
                        "peak power, kW",
                        "signature")
                .containsPattern("Before: pulls? [0-9, ]+\\. After: pulls? [0-9, ]+\\.")
                .containsPattern("Torque gain [0-9.]+ % over the first setting \\(90 % CI [0-9.]+ to [0-9.]+ %\\)")
                .containsPattern("average torque, N·m [0-9.]+ +[0-9.]+ +[-+][0-9.]+ % \u00b1 [0-9.]+")
                .containsPattern("peak power, kW [0-9.]+ [0-9]+ [0-9.]+ [0-9]+ [-+][0-9.]+ % \u00b1 [0-9.]+");
        assertThat(all("(<figure>)", demo.substring(0, demo.indexOf("class=\"annex\""))))
                .hasSize(1);
    }

    @Test
    void everyChartHasWordsAndNumbers() {
        List<String> pictures = all("<img ([^>]*)>", demo);
        assertThat(pictures)
                .hasSize(2)
                .allSatisfy(picture -> assertThat(picture)
                        .contains("src=\"data:image/png;base64,")
                        .containsPattern("alt=\"Chart of [^\"]{30,}\""));
        assertThat(all("<figure>\\s*<img [^>]*>\\s*<div class=\"numbers below\">\\s*(<table>)", demo))
                .hasSize(2);
    }

    @Test
    void aDayOfAMapHasItsChartAndATableOfItsSpeeds() {
        String sheet =
                Sheet.of(Replay.of(SampleDays.input("hillclimb-e10-map")), new Shown(UnitSystem.METRIC), HEADING);
        assertThat(all("alt=\"([^\"]*)\"", sheet))
                .anySatisfy(words -> assertThat(words).contains("spark advance over speed, 14 speeds"));
        assertThat(sheet).containsPattern("<div class=\"numbers\">\\s*<table>\\s*<caption>Spark map by speed");
        assertThat(sheet.replaceAll("<[^>]*>|\\s+", " ").replaceAll(" +", " "))
                .contains("rpm best from to peak run knock limit decided by")
                .containsPattern(" 3500 [0-9.]+ [0-9.]+ [0-9.]+ [0-9.]+ [0-9.]+ peak 3750 ");
    }

    @Test
    void everyTableHasAsManyCellsAsHeadings() {
        assertThat(all("<table>(.*?)</table>", demo)).hasSizeGreaterThan(3).allSatisfy(table -> {
            int headings = all("(<th scope)", table).size();
            assertThat(all("<tr>(<td.*?)</tr>", table))
                    .isNotEmpty()
                    .allSatisfy(row -> assertThat(all("(<td)", row)).hasSize(headings));
        });
    }

    @Test
    void aDashStandsOnTheSideOfItsColumn() {
        Section.Grid grid =
                Section.Grid.of("", "heard", "gain").row("3199 rpm", "+4.08").row("-", "-");
        assertThat(grid.lines())
                .allSatisfy(row -> assertThat(row.cells())
                        .extracting(Section.Grid.Cell::side)
                        .containsExactly("w", "n"));
    }

    @Test
    void ofAnArchiveTheNewestPullsAreListedAndWhereTheOthersAreIsSaid() throws IOException {
        String sheet = Sheet.of(Days.ofMany(folder, 302), new Shown(UnitSystem.METRIC));
        String pulls = sheet.substring(sheet.indexOf("<h2>Pulls"), sheet.indexOf("<h2>Conditions"));
        assertThat(pulls).contains("the newest 300 of 302 pulls, in the CSV file are all");
        assertThat(all("<tr>(<td.*?)</tr>", pulls))
                .hasSize(300)
                .last()
                .asString()
                .contains(">302<");
    }

    @Test
    void nothingIsFetchedAndNothingRuns() {
        for (String sheet : List.of(demo, hostile)) {
            assertThat(sheet)
                    .contains("default-src 'none'")
                    .doesNotContainIgnoringCase("<script", "<link", "<iframe", "@import", "url(", " onerror=");
            assertThat(all("(?:src|href)=\"([^\"]*)\"", sheet)).allMatch(source -> source.startsWith("data:image/png"));
        }
    }

    @Test
    void textFromFilesIsShownAndNeverTakenForMarkup() {
        assertThat(hostile)
                .doesNotContain("<script", "</td><script", "</td>&", "src=http", "example.invalid/a.png>")
                .contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&quot;&amp;");
        assertThat(hostile).contains("<h1>&lt;/td&gt;");
    }

    @Test
    void aStruckPullIsNamedWithItsReason() {
        assertThat(hostile).contains("Operator changes", "Pull 7 was excluded: &lt;/td&gt;");
    }

    @Test
    void everyCautionStandsOnEverySheet() {
        for (String caution : Cautions.sentences()) {
            String start = caution.substring(0, caution.indexOf(' ', 20));
            assertThat(demo.replace("&#39;", "'")).contains(start);
        }
    }

    @Test
    void unitsAreThoseThatTheReaderAskedFor() throws IOException {
        assertThat(demo).contains("peak N·m", "peak kW").doesNotContain("lb-ft");
        String us = Sheet.of(Days.demo(folder), new Shown(UnitSystem.US));
        assertThat(us).contains("peak lb-ft", "peak hp").doesNotContain("peak N·m");
    }

    @Test
    void aColumnThatHoldsNothingIsLeftOut() {
        assertThat(all("<th [^>]*>(.*?)</th>", demo)).contains("peak N·m");
        assertThat(all("<th [^>]*>(.*?)</th>", hostile)).contains("pull").doesNotContain("peak lb-ft");
    }

    @Test
    void thePlanIsThereToRepeatTheDay() {
        assertThat(demo).contains("[timing]", "start_deg &#x3D; 20");
    }

    @Test
    void aSlotOfTheTemplateIsNeverLeftOpen() {
        assertThat(demo).doesNotContain("{{", "}}");
        assertThat(hostile).doesNotContain("{{", "}}");
    }
}
