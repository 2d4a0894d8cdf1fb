package org.nextpull.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NotebookKillIT {
    /** {@code -Dnextpull.kills=200} makes it the number that the figures are taken from. */
    private static final int KILLS = Integer.getInteger("nextpull.kills", 6);

    private static final int CHECKED_WHOLE_EVERY = 20;

    @Test
    void killedAtAnyMomentNoCommittedPullIsLostAndNothingIsDamaged(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("notebook.db");
        Random random = new Random(40);
        Map<Long, Integer> said = new HashMap<>();
        for (int kill = 1; kill <= KILLS; kill++) {
            runAndKill(file, random.nextInt(600), said);
            try (Notebook notebook = Notebook.open(file)) {
                Map<Long, Integer> kept = new HashMap<>();
                notebook.list().forEach(session -> kept.put(session.id(), session.pulls()));
                said.forEach((id, pulls) -> assertThat(kept.getOrDefault(id, 0))
                        .as("pulls of session %d", id)
                        .isGreaterThanOrEqualTo(pulls));
                assertThat(notebook.damage()).as("after a kill").isEmpty();
                if (kill % CHECKED_WHOLE_EVERY == 0 || kill == KILLS) {
                    assertThat(notebook.check().findings()).isEmpty();
                }
            }
        }
        assertThat(said).as("something was committed before the kills").isNotEmpty();
    }

    private static void runAndKill(Path file, long afterMs, Map<Long, Integer> said)
            throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KeepingChild.class.getName(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader out = child.inputReader(StandardCharsets.US_ASCII)) {
            assertThat(out.readLine()).isEqualTo("ready");
            // not through the process itself, which would close the stream that is still read
            CompletableFuture<Void> killed = CompletableFuture.runAsync(
                    () -> child.toHandle().destroyForcibly(),
                    CompletableFuture.delayedExecutor(afterMs, TimeUnit.MILLISECONDS));
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                String[] words = line.split(" ", -1);
                // the last line may be cut
                if (words.length == 2 && !words[1].isEmpty()) {
                    said.merge(Long.parseLong(words[0]), Integer.parseInt(words[1]), Math::max);
                }
            }
            killed.join();
            assertThat(child.waitFor()).as("killed by the signal").isEqualTo(128 + 9);
        }
    }
}
