package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.fit.Experience;
import org.nextpull.live.SessionClaim;
import org.nextpull.live.SessionFolders;
import org.nextpull.notebook.Notebook;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;

/** A session over a folder, begun and ended as at a console. */
@Timeout(120)
class LiveCommandTest {
    private static final String PLAN = "sweep-plans/hillclimb-e10-timing.toml";
    private static final Path LOG = Path.of("sample-logs", "hillclimb-e10-timing.csv");

    @TempDir
    private Path folder;

    private Path logs = Path.of(".");
    private Path notebook = Path.of(".");

    @BeforeEach
    void aFolderForLogs() throws IOException {
        logs = Files.createDirectory(folder.resolve("logs"));
        notebook = folder.resolve("shop.db");
    }

    private Run live(String plan, String typed, String... more) {
        List<String> words = new ArrayList<>(List.of(
                "live",
                "--plan",
                plan,
                "--folder",
                logs.toString(),
                "--notebook",
                notebook.toString(),
                "--accept-cautions"));
        words.addAll(List.of(more));
        return Run.typing(typed, words.toArray(String[]::new));
    }

    private void keepAnEarlierDay() {
        keep(PLAN, LOG.toString());
    }

    private void keep(String plan, String log) {
        Run run =
                Run.of("notebook", "add", "--plan", plan, log, "--on", "2026-05-09", "--notebook", notebook.toString());
        assertThat(run.status()).as(run.err()).isZero();
    }

    private List<Optional<Experience>> learned() throws IOException {
        try (Notebook kept = Notebook.openReadOnly(notebook)) {
            return List.of(
                    kept.session(kept.list().get(0).id()).input().experience(), kept.experience(plan(Path.of(PLAN))));
        }
    }

    private static SweepPlan plan(Path file) throws IOException {
        return PlanText.read(Files.readString(file), file.toString()).value().orElseThrow();
    }

    @Test
    void aSessionBeginsWithWhatTheNotebookKnowsAndGoesOnWithThat() throws IOException {
        keepAnEarlierDay();
        Run begun = live(PLAN, "note cold morning\nend\n");
        assertThat(begun.status()).as(begun.err()).isZero();
        Optional<Experience> known = learned().get(0);
        assertThat(known).isPresent();

        keep("sweep-plans/hillclimb-e10-mixture.toml", "sample-logs/hillclimb-e10-mixture.csv");
        assertThat(learned().get(1)).isPresent().isNotEqualTo(known);
        Run resumed = live(PLAN, "note warmer\nend\n", "--resume");
        assertThat(resumed.status()).as(resumed.err()).isZero();
        try (Notebook kept = Notebook.openReadOnly(notebook)) {
            assertThat(kept.list()).hasSize(3);
            assertThat(kept.session(2).input().experience()).isEqualTo(known);
        }
    }

    @Test
    void anotherPlanIsNoticedWhenASessionIsGoneOnWith() throws IOException {
        assertThat(live(PLAN, "note a\nend\n").status()).isZero();
        assertThat(live(PLAN, "end\n", "--resume").err()).doesNotContain("not the one that the session began with");
        Path other = folder.resolve("other.toml");
        Files.writeString(other, Files.readString(Path.of(PLAN)) + "\n# changed\n");
        Run run = live(other.toString(), "end\n", "--resume");
        assertThat(run.err()).contains("not the one that the session began with");
    }

    @Test
    void aSessionThatRunsElsewhereIsNotGoneOnWith() throws IOException {
        assertThat(live(PLAN, "end\n").status()).isZero();
        Path session = SessionFolders.beside(notebook).newest().orElseThrow();
        try (SessionClaim elsewhere = SessionClaim.of(session).orElseThrow()) {
            assertThat(elsewhere.folder()).isEqualTo(session);
            Run run = live(PLAN, "end\n", "--resume");
            assertThat(run.status()).isEqualTo(1);
            assertThat(run.err()).contains("another program runs this session");
        }
        assertThat(live(PLAN, "end\n", "--resume").status()).isZero();
    }

    @Test
    void aPlanThatWantsToLearnNothingIsObeyed() throws IOException {
        keepAnEarlierDay();
        Path plan = folder.resolve("plan.toml");
        Files.writeString(
                plan, Files.readString(Path.of(PLAN)).replace("[goal]", "[goal]\nlearn_from_notebook = false"));
        assertThat(live(plan.toString(), "end\n").status()).isZero();
        assertThat(learned().get(0)).isEmpty();
    }

    @Test
    void aNotebookThatCannotBeReadIsAWarningAndTheSessionRuns() throws IOException {
        Files.writeString(notebook, "this is no notebook at all, though it lies where one should");
        Run run = live(PLAN, "end\n");
        assertThat(run.status()).isZero();
        assertThat(run.err()).contains("warning: ").contains("shop.db");
        assertThat(run.out()).contains("Next pull: ", "The session ended after 0 pulls.");
    }
}
