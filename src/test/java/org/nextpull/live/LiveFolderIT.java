package org.nextpull.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.Await;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Recording;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;

/** A session over a real folder, into which the logs of a demo day are copied. */
class LiveFolderIT {
    private static final Path PLAN = Path.of("sweep-plans", "hillclimb-e10-timing.toml");
    private static final Path LOG = Path.of("sample-logs", "hillclimb-e10-timing.csv");

    private static SweepPlan plan() throws Exception {
        return PlanText.read(Files.readString(PLAN), PLAN.toString()).value().orElseThrow();
    }

    private static LiveSession.Setup setup(Path folder, Path captures) throws Exception {
        return new LiveSession.Setup(
                plan(),
                new LiveIntake.Folder(new FolderSettings(folder, 300)),
                SessionFolders.Claim.of(captures).orElseThrow(),
                Optional.empty(),
                Keeper.none(),
                new SerialPorts(),
                LiveSession.Setup.Clock.system());
    }

    private static SessionResult advised() throws Exception {
        List<Recording> logs = new LogFiles(LogHints.none())
                .read(List.of(LOG.toString())).good().stream()
                        .map(input -> ((Input.Log) input).recording())
                        .toList();
        return Session.evaluate(SessionInput.of(plan(), logs, List.of()));
    }

    private static List<Object> figures(SessionResult result) {
        return result.pulls().stream()
                .map(pull -> (Object) List.of(pull.number(), pull.setting(), pull.standing(), pull.figures()))
                .toList();
    }

    @Test
    @Timeout(60)
    void aFileThatIsCopiedIntoTheFolderGivesWhatAdviseSaysAndItsCaptureTheSameAgain(@TempDir Path temp)
            throws Exception {
        Path folder = Files.createDirectory(temp.resolve("logs"));
        Path captures = temp.resolve("session");
        SessionResult advised = advised();
        BlockingQueue<MeasuredPull> ended = new LinkedBlockingQueue<>();
        LiveSession.Listener listener = new LiveSession.Listener() {
            @Override
            public void pullEnded(LiveState state, MeasuredPull.Curve pull) {
                ended.add(pull.pull());
            }
        };
        LiveSession session = LiveSession.start(setup(folder, captures), listener);
        try (session) {
            // a file that is there at the first look counts as one from before the session, and nothing tells of that
            // look
            Await.pass(Duration.ofMillis(600));
            Files.copy(LOG, folder.resolve("day.csv"));
            for (MeasuredPull pull : advised.pulls()) {
                assertThat(ended.poll(30, TimeUnit.SECONDS))
                        .extracting(MeasuredPull::figures)
                        .isEqualTo(pull.figures());
            }
            session.tell(new OperatorAction.Strike(2, "test"));
            Heard.await(session, state -> !state.acts().all().isEmpty());
        }
        LiveState before = session.state();
        assertThat(before.result().amendments().struck()).containsKey(2);
        Files.delete(folder.resolve("day.csv"));
        try (LiveSession again = LiveSession.start(setup(folder, captures), new LiveSession.Listener() {})) {
            Heard.await(again, state -> state.nextPull() == before.nextPull());
            assertThat(figures(again.state().result())).isEqualTo(figures(before.result()));
            assertThat(again.state().result().verdict())
                    .isEqualTo(before.result().verdict());
        }
    }
}
