package org.nextpull.intake.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.SessionClock;

class CaptureFolderTest {
    private final FakeClock clock = new FakeClock();

    @Test
    void aFolderWithoutCapturesBeginsASession(@TempDir Path folder) throws IOException {
        CaptureFolder.Resumption begun = new CaptureFolder(folder.resolve("none")).resume(() -> 0, clock);
        assertThat(begun.findings()).isEmpty();
        assertThat(begun.clock().now().sessionNs()).isZero();
    }

    @Test
    void aSessionCutOffGoesOnAndSaysWhatIsMissing(@TempDir Path path) throws IOException {
        CaptureFolder folder = new CaptureFolder(path);
        SessionClock session = clock.session();
        CaptureWriter writer = CaptureWriter.open(folder.fileOf("COM3"), "COM3", session);
        clock.advanceMs(5000);
        writer.received(Chunk.of("COM3", session.now(), "before"));
        writer.received(Chunk.of("COM3", session.now(), "torn"));
        byte[] whole = Files.readAllBytes(folder.fileOf("COM3"));
        writer.close();
        Files.write(folder.fileOf("COM3"), Arrays.copyOf(whole, whole.length - 3));

        clock.advanceMs(42_000);
        CaptureFolder.Resumption resumed = folder.resume(() -> 0, clock);
        assertThat(resumed.findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.CAPTURE_CONTINUED, FindingCode.CAPTURE_DAMAGED);
        assertThat(resumed.findings().get(0).number("seconds")).hasValue(42);
        assertThat(resumed.clock().now().seconds()).isBetween(47.0, 47.001);
    }

    @Test
    void severalCapturesPlayInTheOrderOfTheirArrivals(@TempDir Path path) throws IOException {
        CaptureFolder folder = new CaptureFolder(path);
        SessionClock session = clock.session();
        List<Arrival> all = new ArrayList<>();
        try (CaptureWriter one = CaptureWriter.open(folder.fileOf("/dev/a"), "/dev/a", session);
                CaptureWriter two = CaptureWriter.open(folder.fileOf("/dev/b"), "/dev/b", session)) {
            for (int index = 0; index < 100; index++) {
                clock.advanceMs(index % 3);
                boolean first = index % 7 < 3;
                Arrival arrival = Chunk.of(first ? "/dev/a" : "/dev/b", session.now(), "line " + index);
                (first ? one : two).received(arrival);
                all.add(arrival);
            }
        }
        List<Arrival> played = new ArrayList<>();
        try (CaptureReplay replay = folder.replay()) {
            for (Optional<Arrival> next = replay.next(); next.isPresent(); next = replay.next()) {
                played.add(next.get());
            }
        }
        assertThat(played).isEqualTo(all);
        assertThat(folder.fileOf("/dev/ttyUSB0").getFileName().toString()).startsWith("dev-ttyUSB0-");
        assertThat(folder.fileOf("a/b")).isNotEqualTo(folder.fileOf("a.b"));
    }
}
