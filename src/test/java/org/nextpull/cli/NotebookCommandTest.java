package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.notebook.Notebook;
import org.nextpull.session.OperatorAction;

class NotebookCommandTest {
    private static final String TIMING = "hillclimb-e10-timing";

    @TempDir
    private Path folder;

    private String file;

    @BeforeEach
    void keepADay() {
        file = folder.resolve("notebook.db").toString();
        Run run = add(TIMING);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("Kept as session 1: ");
    }

    private Run add(String name) {
        return add(name, "2026-05-09");
    }

    private Run add(String name, String day) {
        return Run.of(
                "notebook",
                "add",
                "--plan",
                "sweep-plans/" + name + ".toml",
                "sample-logs/" + name + ".csv",
                "--on",
                day,
                "--notebook",
                file);
    }

    private Run notebook(String... words) {
        String[] all = new String[words.length + 3];
        all[0] = "notebook";
        System.arraycopy(words, 0, all, 1, words.length);
        all[words.length + 1] = "--notebook";
        all[words.length + 2] = file;
        return Run.of(all);
    }

    private void note(String text) throws IOException {
        try (Notebook notebook = Notebook.open(Path.of(file))) {
            notebook.keepAct(
                    1, Instant.parse("2026-05-09T11:00:00Z"), new OperatorAction.Note(OptionalInt.of(2), text));
        }
    }

    @Test
    void listIsATableForPeopleAndADocumentForPrograms() {
        assertThat(notebook("list").out()).contains("hill-climb two-litre", "2026-05-09");
        JsonNode session = notebook("list", "--json").json().path("sessions").path(0);
        assertThat(session.path("id").asLong()).isEqualTo(1);
        assertThat(session.path("engine").asText()).isEqualTo("hill-climb two-litre");
        assertThat(session.path("pulls").asInt()).isPositive();
        assertThat(session.path("started").asText()).startsWith("2026-05-09T");
        assertThat(session.path("closed").asText()).startsWith("2026-05-09T");
    }

    @Test
    void aSessionSaysWhatItsLogsSay() {
        String log = Run.of(
                        "advise",
                        "--no-notebook",
                        "--plan",
                        "sweep-plans/" + TIMING + ".toml",
                        "sample-logs/" + TIMING + ".csv")
                .out();
        assertThat(Run.of("advise", "--session", "1", "--notebook", file).out()).isEqualTo(log);
        assertThat(notebook("show", "1").out()).contains(log.substring(0, log.indexOf('\n')));
        Run replay = Run.of("replay", "--session", "1", "--notebook", file);
        assertThat(replay.out()).contains("Would have stopped after pull ");
        Run sheet = Run.of("report", "--session", "1", "--notebook", file, "--out", "-");
        assertThat(sheet.status()).isZero();
        assertThat(sheet.out()).contains("<html");
    }

    @Test
    void searchFindsNotesAndShowPrintsThemWithoutControlCharacters() throws IOException {
        note("tyre \u001b[31mred\u0007 pressure");
        assertThat(notebook("search", "pressure", "tyre").out()).contains("hill-climb");
        assertThat(notebook("search", "nowhere").out()).contains("No session");
        assertThat(notebook("show", "1").out()).contains("on pull 2: tyre").doesNotContain("\u001b", "\u0007");
    }

    @Test
    void exportedPullsAreReadBackAndFormulasAreDefused() throws IOException {
        note("=HYPERLINK(\"http://example.invalid\")");
        Path table = folder.resolve("pulls.csv");
        Run run = notebook("export", "1", "--out", table.toString());
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(table).content().contains("'=HYPERLINK").doesNotContain(",=HYPERLINK");
        Run advise = Run.of("advise", "--no-notebook", "--plan", "sweep-plans/" + TIMING + ".toml", table.toString());
        assertThat(advise.status()).as(advise.err()).isZero();
        assertThat(advise.out()).contains("MBT");
    }

    @Test
    void theSessionOfTheLatestDayIsFirstWhenItWasKeptEarlier() {
        add("hillclimb-manifold", "2026-04-11");
        JsonNode sessions = notebook("list", "--json").json().path("sessions");
        assertThat(sessions.findValuesAsText("id")).containsExactly("1", "2");
        assertThat(sessions.findValuesAsText("started").get(1)).startsWith("2026-04-11T");
    }

    @Test
    void aDayIsKeptOnce() {
        Run again = add(TIMING, "2026-05-10");
        assertThat(again.status()).isEqualTo(1);
        assertThat(again.out()).isEmpty();
        assertThat(again.err()).contains("holds pulls of this day already", "in session 1,");
        assertThat(notebook("list", "--json").json().path("sessions")).hasSize(1);
    }

    @Test
    void aPullThatIsNamedTwiceCountsOnce() {
        add("hillclimb-manifold");
        String log = "sample-logs/hillclimb-manifold.csv";
        JsonNode alone = Run.of("compare", "session:2", "--against", "before", "--notebook", file, "--json")
                .json();
        Run twice = Run.of("compare", "session:2", log, "--against", "before", "--notebook", file, "--json");
        assertThat(twice.status()).as(twice.err()).isZero();
        for (String key : new String[] {"difference_percent", "low_percent", "high_percent"}) {
            assertThat(twice.json().at("/comparisons/0/" + key)).as(key).isEqualTo(alone.at("/comparisons/0/" + key));
        }
        assertThat(twice.err()).containsOnlyOnce(log + " and session:2 hold the same pulls");
    }

    @Test
    void sessionsWithoutLabelsAreComparedByTheirNumbers() {
        add("hillclimb-knock");
        add("hillclimb-e10-mixture");
        Run joined = Run.of("compare", "then=session:2", "session:3", "--against", "then", "--notebook", file);
        assertThat(joined.out()).contains("\"session 3\" vs \"then\"");
    }

    @Test
    void pullsBesideASessionGoByTheNumbersOfTheirLog() {
        String log = "sample-logs/hillclimb-e10-mixture.csv";
        String plan = "sweep-plans/hillclimb-e10-mixture.toml";
        Run joined = Run.of("compare", "--plan", plan, "then=session:1", log, "--against", "then", "--notebook", file);
        assertThat(joined.err()).contains("Pull 1 of " + log + " has no label and is left out");
    }

    @Test
    void aDayThatIsNoneIsSaidPlainly() {
        Run wrong = add("hillclimb-manifold", "2026-13-10");
        assertThat(wrong.status()).isEqualTo(2);
        assertThat(wrong.err())
                .contains("'2026-13-10' is not a date; write year, month and day as in 2026-05-09")
                .doesNotContain("parse", "java", "LocalDate");
    }

    @Test
    void theNotebookIsNotWrittenOver() {
        Run export = notebook("export", "1", "--out", file);
        assertThat(export.status()).isEqualTo(1);
        assertThat(export.err()).contains("is one of the inputs and is not overwritten");
        assertThat(Run.of("report", "--session", "1", "--notebook", file, "--out", file)
                        .status())
                .isEqualTo(1);
        assertThat(notebook("show", "1").status()).isZero();
    }

    @Test
    void curvesSamplesAndEverythingCanBeExported() {
        assertThat(notebook("export", "1", "--what", "curves", "--pull", "2").out())
                .startsWith("pull,advance_deg,lambda,label,rpm,torque_nm,power_kw\r\n2,");
        String samples =
                notebook("export", "1", "--what", "samples", "--pull", "1").out();
        assertThat(samples).startsWith("pull,source,line,");
        assertThat(samples.lines().count()).isGreaterThan(100);
        JsonNode all = notebook("export", "1", "--what", "all").json();
        assertThat(all.path("plan_text").asText()).contains("[timing]");
        assertThat(all.path("curves").size()).isEqualTo(all.path("pulls").size());
        assertThat(notebook("export", "1", "--what", "curves", "--pull", "99").status())
                .isEqualTo(2);
        assertThat(notebook("export", "1", "--what", "nonsense").status()).isEqualTo(2);
    }

    @Test
    void checkSaysThatAllIsWellAndBackUpMakesANotebook() {
        assertThat(notebook("check").out()).startsWith("The notebook is whole: 1 session with ");
        assertThat(notebook("check", "--json").json().path("good").asBoolean()).isTrue();
        String copy = folder.resolve("copy.db").toString();
        assertThat(notebook("back-up", copy).out()).startsWith("Copied 1 session to ");
        assertThat(Run.of("notebook", "list", "--notebook", copy).out()).contains("hill-climb");
        Run again = notebook("back-up", copy);
        assertThat(again.status()).isEqualTo(1);
        assertThat(again.err()).contains("overwrites nothing");
    }

    @Test
    void sessionsAreComparedBesideLogs() {
        add("hillclimb-manifold");
        Run alone = Run.of("compare", "session:2", "--against", "before", "--notebook", file);
        assertThat(alone.status()).as(alone.err()).isZero();
        assertThat(alone.out())
                .isEqualTo(Run.of(
                                "compare",
                                "--plan",
                                "sweep-plans/hillclimb-manifold.toml",
                                "sample-logs/hillclimb-manifold.csv",
                                "--against",
                                "before")
                        .out());
        add("hillclimb-knock");
        Run beside = Run.of(
                "compare",
                "--plan",
                "sweep-plans/hillclimb-manifold.toml",
                "then=session:3",
                "now=sample-logs/hillclimb-manifold.csv",
                "--against",
                "then",
                "--notebook",
                file);
        assertThat(beside.status()).as(beside.err()).isZero();
        assertThat(beside.out()).startsWith("\"now\" vs \"then\": ");
        assertThat(beside.err()).contains("2 days are compared: ");
        assertThat(Run.of("compare", "sample-logs/hillclimb-manifold.csv", "--against", "before")
                        .status())
                .isEqualTo(2);
    }

    @Test
    void earlierDaysTeachAndThatCanBeTurnedOff() {
        add("hillclimb-e10-day");
        String[] advise = {
            "advise", "--plan", "sweep-plans/" + TIMING + ".toml", "sample-logs/" + TIMING + ".csv", "--notebook", file
        };
        assertThat(Run.of(advise).out()).contains("Past days of this engine in use: 1.");
        String[] without = Arrays.copyOf(advise, advise.length + 1);
        without[advise.length] = "--no-notebook";
        assertThat(Run.of(without).out()).doesNotContain("earlier days");
    }

    @Test
    void whatIsWrongIsSaidInASentenceWithItsStatus() throws IOException {
        assertThat(notebook("show", "99").err()).contains("has no session 99");
        assertThat(notebook("show", "99").status()).isEqualTo(1);
        assertThat(notebook("show", "one").status()).isEqualTo(2);
        assertThat(notebook("show").status()).isEqualTo(2);
        String missing = folder.resolve("missing.db").toString();
        Run none = Run.of("notebook", "list", "--notebook", missing);
        assertThat(none.status()).isEqualTo(1);
        assertThat(none.err()).contains("There is no notebook");
        assertThat(Path.of(missing)).doesNotExist();
        Path csv = Files.writeString(folder.resolve("log.csv"), "time,rpm\n0,1\n".repeat(100));
        Run wrong = Run.of("notebook", "check", "--json", "--notebook", csv.toString());
        assertThat(wrong.status()).isEqualTo(1);
        assertThat(wrong.json().path("error").path("code").asText()).isEqualTo("notebook-not-one");
        Run both = Run.of("advise", "--session", "1", "--plan", "x.toml", "--notebook", file);
        assertThat(both.status()).isEqualTo(2);
        assertThat(both.err()).contains("--session takes neither");
        assertThat(Run.of("advise", "--plan", "x.toml").status()).isEqualTo(2);
    }
}
