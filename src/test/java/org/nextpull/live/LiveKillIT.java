package org.nextpull.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.Await;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.PtyPair;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.Notebook;

/** A session that is killed again and again at random moments, while an engine runs pull after pull. */
class LiveKillIT {
    /** {@code -Dnextpull.kills=200} makes it the number that the figures are taken from. */
    private static final int KILLS = Math.max(1, Integer.getInteger("nextpull.kills", 20) / 7);

    private static final int PULL_ROWS = 300;
    private static final int CYCLE_ROWS = 650;

    @Test
    @Timeout(7200)
    void noPullThatWasKeptIsLostAndEveryResumeSucceeds(@TempDir Path temp) throws Exception {
        Random random = new Random(11);
        Path captures = temp.resolve("session");
        Path notebook = temp.resolve("notebook.db");
        AtomicBoolean ended = new AtomicBoolean();
        List<KeptSession.Pull> before = List.of();
        int seen = 0;
        try (PtyPair pair = PtyPair.plugIn(temp);
                Port far = new SerialPorts()
                        .open(Port.Settings.usual(pair.far(), 115_200))
                        .value()
                        .orElseThrow()) {
            Thread engine = new Thread(() -> run(far, ended), "engine");
            engine.start();
            for (int kill = 0; kill < KILLS; kill++) {
                int resumed = runAndKill(pair, captures, notebook, 200 + random.nextInt(2500));
                assertThat(resumed).as("pulls after resume %d", kill).isGreaterThanOrEqualTo(seen);
                List<KeptSession.Pull> now = kept(notebook);
                assertThat(now.size()).as("pulls kept after kill %d", kill).isGreaterThanOrEqualTo(before.size());
                for (int pull = 0; pull < before.size(); pull++) {
                    assertThat(now.get(pull)).isEqualTo(before.get(pull));
                }
                before = now;
                seen = Math.max(seen, now.size());
            }
            ended.set(true);
            engine.join();
            LiveSession last = LiveSession.start(LiveChild.setup(pair.near(), captures, notebook), new Heard());
            int least = seen;
            try (last) {
                Heard.await(last, state -> state.nextPull() > least);
            }
            try (Notebook kept = Notebook.openReadOnly(notebook)) {
                assertThat(kept.check().findings()).isEmpty();
                KeptSession session = kept.session(1);
                assertThat(session.result().pulls())
                        .isEqualTo(last.state().result().pulls());
            }
        }
    }

    /** How many pulls the program knew after it had gone on. */
    private static int runAndKill(PtyPair pair, Path captures, Path notebook, long afterMs)
            throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        LiveChild.class.getName(),
                        pair.near(),
                        captures.toString(),
                        notebook.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int resumed = -1;
        try (BufferedReader out = child.inputReader(StandardCharsets.US_ASCII)) {
            for (String line = out.readLine(); line != null && resumed < 0; line = out.readLine()) {
                if (line.startsWith("resumed ")) {
                    resumed = Integer.parseInt(line.substring("resumed ".length()));
                    break;
                }
            }
            assertThat(child.waitFor(afterMs, TimeUnit.MILLISECONDS))
                    .as("it ended by itself")
                    .isFalse();
            child.toHandle().destroyForcibly();
            assertThat(child.waitFor()).as("killed by the signal").isEqualTo(128 + 9);
        }
        assertThat(resumed).as("the program went on").isNotNegative();
        return resumed;
    }

    private static List<KeptSession.Pull> kept(Path notebook) throws IOException {
        if (!Files.exists(notebook)) {
            return List.of();
        }
        try (Notebook kept = Notebook.openReadOnly(notebook)) {
            return kept.list().isEmpty() ? List.of() : kept.session(1).pulls();
        }
    }

    /** Pull after pull, ten times as fast as an engine would; what nobody reads is lost, as on a wire. */
    private static void run(Port far, AtomicBoolean ended) {
        long start = System.nanoTime();
        for (long row = 0; !ended.get(); row++) {
            int at = (int) (row % CYCLE_ROWS);
            double rpm = at < PULL_ROWS ? 2800 + 10 * at : 1500;
            String line = String.format(
                    Locale.ROOT, "%.0f,%.1f,%d%n", rpm, at < PULL_ROWS ? 200.0 : 4, at < PULL_ROWS ? 100 : 10);
            try {
                far.write(line.getBytes(StandardCharsets.US_ASCII));
            } catch (IOException nobodyReads) {
                // the buffer of the wire is full until somebody does
                Await.pass(Duration.ofMillis(1));
            }
            long due = start + row * 20_000_000L / LiveChild.FASTER;
            Await.moment(due);
        }
    }
}
