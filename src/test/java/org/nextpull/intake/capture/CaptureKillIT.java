package org.nextpull.intake.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.Chunk;

class CaptureKillIT {
    /** {@code -Dnextpull.kills=200} makes it the number that the figures are taken from. */
    private static final int KILLS = Integer.getInteger("nextpull.kills", 20);

    @Test
    void killedAtAnyMomentEveryLineThatWasSaidIsThereAndTheCaptureGoesOn(@TempDir Path folder) throws Exception {
        Random random = new Random(20);
        long next = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            long said = runAndKill(folder, next, random.nextInt(400));
            next = check(folder);
            assertThat(next).as("after kill %d", kill).isGreaterThan(said);
        }
        assertThat(next).isGreaterThan(KILLS);
        CaptureSummary summary = new CaptureFolder(folder).summaries().get(0);
        assertThat(summary.starts()).isEqualTo(KILLS);
    }

    /** The last line that the child said to be in the file; one less than {@code from} when it was killed before. */
    private static long runAndKill(Path folder, long from, long afterMs) throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        CaptureChild.class.getName(),
                        folder.toString(),
                        Long.toString(from))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader out = child.inputReader(StandardCharsets.US_ASCII)) {
            String first = out.readLine();
            assertThat(first).isEqualTo(Long.toString(from));
            // not through the process itself, which would close the stream that is still read
            CompletableFuture<Void> killed = CompletableFuture.runAsync(
                    () -> child.toHandle().destroyForcibly(),
                    CompletableFuture.delayedExecutor(afterMs, TimeUnit.MILLISECONDS));
            long said = from;
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                boolean whole = line.length() >= Long.toString(from).length();
                said = whole && Long.parseLong(line) == said + 1 ? said + 1 : said;
            }
            killed.join();
            assertThat(child.waitFor()).as("killed by the signal").isEqualTo(128 + 9);
            return said;
        }
    }

    /** Checks that the captured lines are numbered without a hole, and gives the number after the last. */
    private static long check(Path folder) throws IOException {
        long next = 0;
        long lastNs = -1;
        try (CaptureReplay replay = new CaptureFolder(folder).replay()) {
            for (Optional<Arrival> arrival = replay.next(); arrival.isPresent(); arrival = replay.next()) {
                assertThat(arrival.get().at().sessionNs()).isGreaterThanOrEqualTo(lastNs);
                lastNs = arrival.get().at().sessionNs();
                if (arrival.get() instanceof Chunk chunk) {
                    String text = new String(chunk.toArray(), StandardCharsets.US_ASCII);
                    assertThat(text).startsWith(next + " ").endsWith("\n");
                    next++;
                }
            }
        }
        return next;
    }
}
