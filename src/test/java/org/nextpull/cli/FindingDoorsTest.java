package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.app.DayReader;
import org.nextpull.app.LabelledLog;
import org.nextpull.app.NotebookAccess;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.report.FindingText;
import org.nextpull.report.LiveText;
import org.nextpull.report.Shown;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.bench.BenchPage;
import org.nextpull.window.bench.BenchPresenter;
import org.nextpull.window.day.DaySource;

/** What was found of a day is said at every door: of the plan, of files, of rows, of refused and used pulls, of the day. Invented data. */
class FindingDoorsTest {
    private static final Shown METRIC = new Shown(UnitSystem.METRIC);
    private static final FindingText SENTENCES = FindingText.in(METRIC);

    @TempDir
    private static Path folder = Path.of(".");

    private static String day = "";
    private static SessionResult result = none();

    /** One finding of each kind. */
    private static final List<FindingCode> KINDS = List.of(
            FindingCode.PLAN_CRANK_ON_CHASSIS,
            FindingCode.FILE_NOT_FOUND,
            FindingCode.VALUES_IMPOSSIBLE,
            FindingCode.ROWS_BROKEN,
            FindingCode.PULL_CUT_SHORT,
            FindingCode.EXHAUST_STILL_RISING,
            FindingCode.LAMBDA_DELAY_ESTIMATED,
            FindingCode.LIMIT_NOT_WATCHED);

    private static SessionResult none() {
        return read("sweep-plans/hillclimb-manifold.toml", List.of("sample-logs/hillclimb-manifold.csv"));
    }

    private static SessionResult read(String plan, List<String> logs) {
        return DayReader.day(
                        new NotebookAccess(Path.of("none.db"), false),
                        Optional.of(plan),
                        logs.stream().map(LabelledLog::unlabelled).toList())
                .value()
                .orElseThrow()
                .result();
    }

    @BeforeAll
    static void spoilADay() throws IOException {
        List<String> rows = new ArrayList<>(Files.readAllLines(Path.of("sample-logs/hillclimb-e10-timing.csv")));
        for (int row = 100; row < 140; row++) {
            rows.set(row, rows.get(row).replaceFirst(",86\\.\\d,", ",9999.0,"));
        }
        rows.set(30, rows.get(30).replaceFirst("^[^,]*,[^,]*,", "0.5,what,"));
        Path log = Files.write(folder.resolve("day.csv"), rows.subList(0, rows.size() - 130));
        Path plan = Files.writeString(
                folder.resolve("plan.toml"),
                Files.readString(Path.of("sweep-plans/hillclimb-e10-timing.toml"))
                        .replace("kind = \"engine-brake\"", "kind = \"chassis-brake\"")
                        .replace("[start]", "inlet_c = 60\ninjector_duty_percent = 90\n[start]"));
        String missing = folder.resolve("none.csv").toString();
        day = "--no-notebook --plan " + plan + " " + log + " " + missing;
        result = read(plan.toString(), List.of(log.toString(), missing));
    }

    /** The first of each code, by which its sentence is known again. */
    private static Map<FindingCode, String> sentences() {
        Map<FindingCode, String> sentences = new EnumMap<>(FindingCode.class);
        for (Finding finding : result.found()) {
            sentences.putIfAbsent(finding.code(), SENTENCES.sentence(finding));
        }
        return sentences;
    }

    private static void saysAll(String door, String text) {
        sentences()
                .forEach((code, sentence) ->
                        assertThat(text).as(door + ": " + code).contains(sentence));
    }

    @Test
    void theDayHasOneOfEachKind() {
        assertThat(result.found()).extracting(Finding::code).containsAll(KINDS);
    }

    @Test
    void theTextOfAdviseAndOfReplay() {
        Run advise = Run.of("advise " + day);
        saysAll("advise", advise.out());
        assertThat(advise.err()).as("said once").isEmpty();
        assertThat(advise.out()).containsOnlyOnce(sentences().get(FindingCode.VALUES_IMPOSSIBLE));
        saysAll("replay", Run.of("replay " + day).out());
    }

    @Test
    void theDocumentsOfAdviseAndOfReplay() {
        for (String command : List.of("advise", "replay")) {
            JsonNode document = Run.of(command + " --json " + day).json();
            List<String> codes = new ArrayList<>(document.path("findings").findValuesAsText("code"));
            document.path("pulls")
                    .forEach(pull -> codes.addAll(pull.path("findings").findValuesAsText("code")));
            assertThat(codes)
                    .as(command)
                    .containsAll(
                            sentences().keySet().stream().map(FindingCode::id).toList());
        }
    }

    @Test
    void theSheet() {
        String sheet = Run.of("report --out - " + day).out();
        saysAll(
                "report",
                sheet.replace("&#x3D;", "=")
                        .replace("&quot;", "\"")
                        .replace("&#39;", "'")
                        .replace("&amp;", "&"));
    }

    @Test
    void theBenchOfTheWindow() {
        String remarks = new BenchPresenter(UnitSystem.METRIC)
                .page(new DaySource.Moment("the day", result, Optional.empty(), Optional.empty())).day().stream()
                        .map(BenchPage.Remark::sentence)
                        .collect(Collectors.joining("\n"));
        saysAll("window", remarks);
    }

    @Test
    void aRunningSession() {
        LiveText words = new LiveText(METRIC);
        EnumSet<FindingCode> said = EnumSet.noneOf(FindingCode.class);
        saysAll("live", String.join("\n", words.found(result, said)));
        assertThat(words.found(result, said)).as("said once").isEmpty();
    }
}
