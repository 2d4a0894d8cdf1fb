package org.nextpull.intake.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.SessionClock;

class CaptureWriterTest {
    private static final String SOURCE = Captures.SOURCE;

    private final FakeClock clock = new FakeClock();
    private final SessionClock session = clock.session();

    @Test
    void whatArrivedIsInTheFileBeforeTheCallReturns(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("new").resolve("wire.capture");
        try (CaptureWriter writer = CaptureWriter.open(file, SOURCE, session)) {
            for (Arrival arrival : Captures.arrivals(1, 50)) {
                writer.received(arrival);
                List<Arrival> inFile = Captures.received(Captures.entries(Files.readAllBytes(file)));
                assertThat(inFile.get(inFile.size() - 1)).isEqualTo(arrival);
            }
            assertThat(writer.news()).isEmpty();
        }
        CaptureSummary summary = CaptureSummary.of(file);
        assertThat(lastEntry(file)).isInstanceOf(CaptureReader.Entry.Ended.class);
        assertThat(summary.source()).isEqualTo(SOURCE);
        assertThat(summary.starts()).isEqualTo(1);
        assertThat(summary.damagedBytes()).isZero();
    }

    @Test
    void aFileCutInARecordIsContinued(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("wire.capture");
        List<Arrival> first = Captures.arrivals(1, 20);
        try (CaptureWriter writer = CaptureWriter.open(file, SOURCE, session)) {
            first.forEach(writer::received);
        }
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, java.util.Arrays.copyOf(whole, whole.length - 40));
        int kept = Captures.received(Captures.entries(Files.readAllBytes(file))).size();

        CaptureFolder captures = new CaptureFolder(folder);
        clock.advanceMs(60_000);
        SessionClock resumed = captures.resume(() -> 0, clock).clock();
        Chunk later = Chunk.of(SOURCE, resumed.now(), "after");
        try (CaptureWriter writer = CaptureWriter.open(file, SOURCE, resumed)) {
            writer.received(later);
        }

        List<Arrival> all = Captures.received(Captures.entries(Files.readAllBytes(file)));
        assertThat(all).hasSize(kept + 1).startsWith(first.get(0)).endsWith(later);
        assertThat(later.at().sessionNs())
                .isGreaterThan(first.get(kept - 1).at().sessionNs());
        CaptureSummary summary = CaptureSummary.of(file);
        assertThat(summary.starts()).isEqualTo(2);
        assertThat(summary.damage()).hasSize(1);
    }

    @Test
    void aFullDiskIsSaidOnceAndWhatCameMeanwhileIsWrittenWhenThereIsRoom() throws IOException {
        FakeDisk disk = new FakeDisk();
        CaptureWriter writer = CaptureWriter.open(Path.of("x.capture"), SOURCE, session, disk, new Backlog());
        writer.received(chunk("one"));
        disk.room = 20;
        writer.received(chunk("two"));
        writer.received(chunk("three"));
        assertThat(writer.news()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.CAPTURE_NOT_SAVED);
            assertThat(finding.text("why")).contains("No space left on device");
        });

        disk.room = Integer.MAX_VALUE;
        clock.advanceMs(900);
        writer.received(chunk("four"));
        assertThat(writer.news()).isEmpty();
        clock.advanceMs(101);
        writer.received(chunk("five"));
        assertThat(writer.news()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.CAPTURE_SAVES_AGAIN);
            assertThat(finding.number("bytes")).hasValue(0);
        });
        writer.close();
        assertThat(texts(disk)).containsExactly("one", "two", "three", "four", "five");
    }

    @Test
    void whatMemoryCannotHoldIsGivenUpOldestFirstAndTheFileSaysSo() throws IOException {
        FakeDisk disk = new FakeDisk();
        CaptureWriter writer = CaptureWriter.open(Path.of("x.capture"), SOURCE, session, disk, new Backlog(500));
        writer.received(chunk("kept"));
        disk.room = 0;
        for (int index = 0; index < 10; index++) {
            writer.received(chunk("0123456789".repeat(10)));
        }
        disk.room = Integer.MAX_VALUE;
        clock.advanceMs(2000);
        writer.tick();

        List<Arrival> saved = Captures.received(Captures.entries(disk.file.toByteArray()));
        assertThat(saved).hasSize(1 + 1 + 3);
        assertThat(saved.get(1)).isInstanceOfSatisfying(Arrival.Lost.class, lost -> {
            assertThat(lost.why()).isEqualTo(Arrival.Cause.NOT_SAVED);
            assertThat(lost.bytes()).isEqualTo(700);
        });
        assertThat(writer.news())
                .last()
                .satisfies(finding -> assertThat(finding.number("bytes")).hasValue(700));
    }

    @Test
    void aFolderWithoutRightsKeepsTheSessionInMemoryAndSaysWhy() throws IOException {
        FakeDisk disk = new FakeDisk();
        disk.refusal = Optional.of(new AccessDeniedException("/captures/x.capture"));
        CaptureWriter writer = CaptureWriter.open(Path.of("x.capture"), SOURCE, session, disk, new Backlog());
        writer.received(chunk("held"));
        assertThat(writer.news()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.CAPTURE_NOT_SAVED);
            assertThat(finding.text("why")).contains("no right to write there");
        });
        disk.refusal = Optional.empty();
        clock.advanceMs(1000);
        writer.tick();
        assertThat(texts(disk)).containsExactly("held");
    }

    @Test
    void aFolderThatIsAFileIsSaid(@TempDir Path folder) throws IOException {
        Path blocked = Files.writeString(folder.resolve("blocked"), "x");
        try (CaptureWriter writer = CaptureWriter.open(blocked.resolve("x.capture"), SOURCE, session)) {
            writer.received(chunk("held"));
            assertThat(writer.news())
                    .singleElement()
                    .extracting(finding -> finding.code())
                    .isEqualTo(FindingCode.CAPTURE_NOT_SAVED);
            Files.delete(blocked);
            clock.advanceMs(1000);
            writer.tick();
            assertThat(writer.news())
                    .extracting(finding -> finding.code())
                    .containsExactly(FindingCode.CAPTURE_SAVES_AGAIN);
        }
        assertThat(CaptureSummary.of(blocked.resolve("x.capture")).bytes()).isEqualTo(4);
    }

    @Test
    void aFileDeletedUnderTheWriterIsNoticedAndBegunAgain(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("x.capture");
        try (CaptureWriter writer = CaptureWriter.open(file, SOURCE, session)) {
            writer.received(chunk("gone"));
            Files.delete(file);
            clock.advanceMs(1000);
            writer.tick();
            assertThat(writer.news())
                    .extracting(finding -> finding.code())
                    .containsExactly(FindingCode.CAPTURE_NOT_SAVED, FindingCode.CAPTURE_SAVES_AGAIN);
            writer.received(chunk("there"));
        }
        assertThat(CaptureSummary.of(file).bytes()).isEqualTo(5);
    }

    @Test
    void twoSessionsDoNotWriteOneFile(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("x.capture");
        try (CaptureWriter first = CaptureWriter.open(file, SOURCE, session);
                CaptureWriter second = CaptureWriter.open(file, SOURCE, session)) {
            assertThat(first.news()).isEmpty();
            assertThat(second.news())
                    .singleElement()
                    .satisfies(finding -> assertThat(finding.text("why")).contains("another session writes to it"));
        }
    }

    /** {@code /dev/full} is the kernel's own full disk: each write to it fails with ENOSPC (manual page full(4)). */
    @Test
    void theKernelsFullDiskIsSaidAsOne() {
        Path full = Path.of("/dev/full");
        Assumptions.assumeTrue(Files.isWritable(full), "this system has no /dev/full");
        try (CaptureWriter writer = CaptureWriter.open(
                Path.of("x.capture"),
                SOURCE,
                session,
                () -> new CaptureWriter.Store.Opened(new ChannelStore(full), 1),
                new Backlog())) {
            writer.received(chunk("one"));
            assertThat(writer.news())
                    .singleElement()
                    .satisfies(finding -> assertThat(finding.text("why")).contains("No space left on device"));
        }
    }

    @Test
    void settingTheComputersClockBackMovesNoArrival(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("x.capture");
        try (CaptureWriter writer = CaptureWriter.open(file, SOURCE, session)) {
            clock.advanceMs(100);
            writer.received(chunk("before"));
            clock.setWallBy(-3_600_000);
            clock.advanceMs(100);
            writer.received(chunk("after"));
        }
        List<Arrival> arrivals = Captures.received(Captures.entries(Files.readAllBytes(file)));
        assertThat(arrivals.get(1).at().sessionNs() - arrivals.get(0).at().sessionNs())
                .isEqualTo(100_000_000);
        assertThat(arrivals.get(1).at().wallMs() - arrivals.get(0).at().wallMs())
                .isEqualTo(-3_599_900);
    }

    @Test
    void theKeeperSyncsAndEndsTheCaptures(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("x.capture");
        CaptureKeeper keeper = new CaptureKeeper();
        keeper.add(CaptureWriter.open(file, SOURCE, session));
        keeper.syncSoon();
        keeper.close();
        assertThat(keeper.news()).isEmpty();
        assertThat(lastEntry(file)).isInstanceOf(CaptureReader.Entry.Ended.class);
    }

    private static CaptureReader.Entry lastEntry(Path file) throws IOException {
        List<CaptureReader.Entry> entries = Captures.entries(Files.readAllBytes(file));
        return entries.get(entries.size() - 1);
    }

    private Chunk chunk(String text) {
        return Chunk.of(SOURCE, session.now(), text);
    }

    private static List<String> texts(FakeDisk disk) throws IOException {
        return Captures.received(Captures.entries(disk.file.toByteArray())).stream()
                .map(arrival -> new String(((Chunk) arrival).toArray(), java.nio.charset.StandardCharsets.UTF_8))
                .toList();
    }

    /** A disk with so much room, which writes what fits before it fails. */
    private static final class FakeDisk implements CaptureWriter.Store.Opener {
        private final ByteArrayOutputStream file = new ByteArrayOutputStream();
        private final List<String> log = new ArrayList<>();
        private Optional<IOException> refusal = Optional.empty();
        private int room = Integer.MAX_VALUE;

        @Override
        public CaptureWriter.Store.Opened open() throws IOException {
            if (refusal.isPresent()) {
                throw refusal.get();
            }
            return new CaptureWriter.Store.Opened(
                    new CaptureWriter.Store() {
                        @Override
                        public void append(ByteBuffer bytes) throws IOException {
                            int fits = Math.min(room, bytes.remaining());
                            file.writeBytes(Captures.bytes(bytes.slice(0, fits)));
                            room -= room == Integer.MAX_VALUE ? 0 : fits;
                            if (fits < bytes.remaining()) {
                                throw new IOException("No space left on device");
                            }
                        }

                        @Override
                        public void force() {
                            log.add("force");
                        }

                        @Override
                        public boolean isThere() {
                            return true;
                        }

                        @Override
                        public void close() {
                            log.add("close");
                        }
                    },
                    42);
        }
    }

    /** Writes to a device that cannot be locked or measured. */
    private record ChannelStore(Path device) implements CaptureWriter.Store {
        @Override
        public void append(ByteBuffer bytes) throws IOException {
            Files.write(device, Captures.bytes(bytes), StandardOpenOption.WRITE);
        }

        @Override
        public void force() {}

        @Override
        public boolean isThere() {
            return true;
        }

        @Override
        public void close() {}
    }
}
