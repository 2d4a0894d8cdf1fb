package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet from the command line, over the invented logs that come with the project. */
class ReportCommandTest {
    private static final String PLAN = "sweep-plans/hillclimb-manifold.toml";
    private static final String LOG = "sample-logs/hillclimb-manifold.csv";

    @TempDir
    private Path folder;

    private String path(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void thePullsBesideTheSheetCompareAsTheLogDoes() throws IOException {
        Run written = Run.of("report", "--plan", PLAN, LOG, "--out", path("day.html"));
        assertThat(written.status()).isZero();
        assertThat(folder).isDirectoryContaining("glob:**day.html").isDirectoryContaining("glob:**day.json");
        JsonNode log = compared(LOG);
        JsonNode table = compared(path("day.csv"));
        for (String key : new String[] {"difference_percent", "low_percent", "high_percent", "difference_nm"}) {
            assertThat(table.path(key).asDouble())
                    .as(key)
                    .isCloseTo(log.path(key).asDouble(), within(2e-3));
        }
        assertThat(table.path("verdict")).isEqualTo(log.path("verdict"));
    }

    @Test
    void heldSpeedsAreToldByTheirAdvancesAndNotByWhatNobodyWasAdvised() throws IOException {
        String plan = "sweep-plans/hillclimb-e10-hold.toml";
        Run.of("engine", "write", "--plan", plan, "--seed", "5", "--out", path("held.csv"));
        String sheet =
                Run.of("report", "--plan", plan, path("held.csv"), "--out", "-").out();
        String deg = "( [0-9]+\\.[0-9],?)";
        assertThat(sheet.substring(sheet.indexOf("<h2>How it was found"), sheet.indexOf("<h2>Findings")))
                .containsPattern("Pulls 1 to [0-9]+: held at 3750 rpm," + deg + "{3,} deg</li>")
                .containsPattern(": held at 5000 rpm," + deg + "{3,} deg</li>")
                .containsPattern(": held at 6250 rpm," + deg + "{3,} deg\\. SET map of [0-9.]+ to [0-9.]+ deg</li>")
                .containsPattern("<li>Pull [0-9]+: DONE\\. Final setting")
                .doesNotContain("REPEAT");
        assertThat(Run.of("replay", "--plan", plan, path("held.csv")).out())
                .containsPattern("used +- +held at 3750 rpm\n.*as above\n")
                .containsPattern("held at 6250 rpm\\. SET map of ")
                .doesNotContain("REPEAT");
    }

    @Test
    void theLogThatWasReadIsNotWrittenOver() throws IOException {
        Path log = Files.copy(Path.of(LOG), folder.resolve("day.csv"));
        Path link = Files.createSymbolicLink(folder.resolve("linked.csv"), log);
        Run over = Run.of("report", "--plan", PLAN, link.toString(), "--out", path("day.html"));
        assertThat(over.status()).isEqualTo(1);
        assertThat(over.err()).contains("day.csv is one of the inputs and is not overwritten");
        assertThat(log).hasSameBinaryContentAs(Path.of(LOG));
        assertThat(folder.resolve("day.html")).doesNotExist();
        Files.writeString(folder.resolve("day.html"), "an earlier sheet");
        assertThat(Run.of("report", "--plan", PLAN, log.toString(), "--out", path("day.html"))
                        .status())
                .isEqualTo(1);
        Path plan = Files.copy(Path.of(PLAN), folder.resolve("plan.toml"));
        Run planned = Run.of("report", "--plan", plan.toString(), LOG, "--out", plan.toString());
        assertThat(planned.status()).isEqualTo(1);
        assertThat(plan).hasSameBinaryContentAs(Path.of(PLAN));
    }

    @Test
    void whatStandsBesideWithoutASheetIsNotOurs() throws IOException {
        Path own = Files.writeString(folder.resolve("day.json"), "somebody's own");
        Run refused = Run.of("report", "--plan", PLAN, LOG, "--out", path("day.html"));
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("day.json is there already without", "choose another name", "--out");
        assertThat(own).hasContent("somebody's own");
        assertThat(folder.resolve("day.html")).doesNotExist();
        assertThat(folder.resolve("day.csv")).doesNotExist();
        Files.writeString(folder.resolve("day.html"), "an earlier sheet");
        Run renewed = Run.of("report", "--plan", PLAN, LOG, "--out", path("day.html"));
        assertThat(renewed.status()).as(renewed.err()).isZero();
        assertThat(own).content().startsWith("{");
    }

    @Test
    void thePullsBesideTheSheetAreReadBackUnderAPlanThatGivesARateOfRows() {
        String plan = "sweep-plans/hillclimb-e10-day.toml";
        Run written = Run.of("report", "--plan", plan, "sample-logs/hillclimb-e10-day.csv", "--out", path("e10.html"));
        assertThat(written.status()).as(written.err()).isZero();
        Run back = Run.of("advise", "--no-notebook", "--plan", plan, path("e10.csv"));
        assertThat(back.status()).as(back.err()).isZero();
        assertThat(back.out()).contains("is a table of results");
    }

    private static JsonNode compared(String log) {
        Run run = Run.of("compare", "--plan", PLAN, log, "--against", "before", "--json");
        assertThat(run.status()).isZero();
        return run.json().path("comparisons").path(0);
    }

    @Test
    void theSheetSaysWhatCompareSays() throws IOException {
        Run.of("report", "--plan", PLAN, LOG, "--out", path("day.html"), "--title", "Old and <new> manifold");
        String sheet = Files.readString(folder.resolve("day.html"))
                .replace("&#x3D;", "=")
                .replace("&quot;", "\"");
        String said =
                Run.of("compare", "--plan", PLAN, LOG, "--against", "before").out();
        assertThat(sheet)
                .contains(said.lines().findFirst().orElseThrow())
                .contains("<h2>Comparison</h2>", "<h1>Old and &lt;new&gt; manifold</h1>")
                .doesNotContain("sweeps nothing", "to advise on")
                .contains("Difference of torque, after vs before", "by nextpull");
    }

    @Test
    void theReferenceCanBeNamedAndAMisspeltOneIsSaid() throws IOException {
        assertThat(Run.of("report", "--plan", PLAN, LOG, "--against", "after", "--out", "-")
                        .out())
                .contains("&quot;before&quot; vs &quot;after&quot;: LOSS -");
        assertThat(Run.of("report", "--plan", PLAN, LOG, "--against", "aftr", "--out", "-")
                        .out())
                .contains("The labels of this day could not be compared.", "after");
    }

    @Test
    void onStandardOutputNothingIsWrittenBesideIt() throws IOException {
        Run run = Run.of("report", "--plan", PLAN, LOG, "--out", "-");
        assertThat(run.out()).startsWith("<!DOCTYPE html>");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        Run run = Run.of("report", "--plan", PLAN, LOG, "--out", path("none/day.html"));
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).contains("none").doesNotContain("Exception");
    }
}
