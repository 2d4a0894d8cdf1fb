package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.fit.Experience;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.Keeper;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.LiveSession;
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

        keep("sweep-plans/hillclimb-e10-map.toml", "sample-logs/hillclimb-e10-map.csv");
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
        try (SessionFolders.Claim elsewhere = SessionFolders.Claim.of(session).orElseThrow()) {
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
        assertThat(run.out()).contains("SET ", "The session ended after 0 pulls.");
    }

    @Test
    void aSessionIsNamedToGoOnWithAndOneThatWasKeptFromLogsCannotBe() throws IOException {
        keepAnEarlierDay();
        assertThat(live(PLAN, "note first\nend\n").status()).isZero();
        assertThat(live(PLAN, "note second\nend\n").status()).isZero();
        assertThat(live(PLAN, "note again first\nend\n", "--resume", "2").status())
                .isZero();
        try (Notebook kept = Notebook.openReadOnly(notebook)) {
            assertThat(kept.list()).hasSize(3);
            assertThat(kept.session(2).acts()).hasSize(2);
            assertThat(kept.session(3).acts()).hasSize(1);
        }
        Run fromLogs = live(PLAN, "end\n", "--resume", "1");
        assertThat(fromLogs.status()).isEqualTo(1);
        assertThat(fromLogs.err()).contains("Session 1 has no raw data to continue from");
        assertThat(live(PLAN, "end\n", "--resume", "9").err()).contains("9");
        assertThat(live(PLAN, "end\n", "--resume", "9").status()).isEqualTo(1);
        assertThat(live(PLAN, "end\n", "--resume=first").status()).isEqualTo(2);
        try (Notebook kept = Notebook.openReadOnly(notebook)) {
            assertThat(kept.list()).as("nothing was begun").hasSize(3);
        }
    }

    @Test
    void anotherEngineDoesNotGoIntoTheSession() throws IOException {
        assertThat(live(PLAN, "note a\nend\n").status()).isZero();
        Path session = SessionFolders.beside(notebook).newest().orElseThrow();
        Run run = live("sweep-plans/hatchback-roller-mixture.toml", "note b\nend\n", "--resume");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err())
                .contains("two engines do not go into one session", "hill-climb two-litre", "1.2 hatchback");
        try (Notebook kept = Notebook.openReadOnly(notebook)) {
            assertThat(kept.list()).hasSize(1);
            assertThat(kept.session(1).acts()).hasSize(1);
        }
        assertThat(SessionFolders.beside(notebook).isRunning(session))
                .as("the claim is given back")
                .isFalse();
    }

    @Test
    void aPortThatIsNotThereIsAnErrorSoonAndLeavesNoSession() throws IOException {
        long began = System.nanoTime();
        Run run = Run.of(
                "live",
                "--plan",
                PLAN,
                "--port",
                "/dev/no-such-port-here",
                "--notebook",
                notebook.toString(),
                "--accept-cautions");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).contains("/dev/no-such-port-here: there is no such port");
        assertThat(System.nanoTime() - began).isLessThan(30_000_000_000L);
        assertThat(notebook).doesNotExist();
        assertThat(SessionFolders.beside(notebook).newest()).isEmpty();
    }

    @Test
    void aSessionHoldsItsFolderUntilItHasEnded() throws IOException {
        SessionFolders folders = SessionFolders.beside(notebook);
        SessionFolders.Claim claim = folders.claimFresh(Instant.parse("2026-11-25T08:15:30Z"));
        assertThat(folders.claim(claim.folder())).as("by the same program").isEmpty();
        assertThat(folders.isRunning(claim.folder())).isTrue();
        LiveSession session = LiveSession.start(
                new LiveSession.Setup(
                        plan(Path.of(PLAN)),
                        new LiveIntake.Folder(FolderSettings.usual(logs)),
                        claim,
                        Optional.empty(),
                        Keeper.none(),
                        new SerialPorts(),
                        LiveSession.Setup.Clock.system()),
                new LiveSession.Listener() {});
        Run elsewhere = live(PLAN, "end\n", "--resume");
        assertThat(elsewhere.err()).contains("another program runs this session");
        assertThat(elsewhere.status()).isEqualTo(1);
        session.close();
        assertThat(folders.isRunning(claim.folder())).isFalse();
        assertThat(live(PLAN, "end\n", "--resume").status()).isZero();
    }
}
