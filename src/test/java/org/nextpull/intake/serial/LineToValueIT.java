package org.nextpull.intake.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLongArray;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.Await;
import org.nextpull.channel.Block;
import org.nextpull.channel.Channel;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.capture.CaptureFolder;
import org.nextpull.intake.capture.CaptureKeeper;
import org.nextpull.intake.capture.CaptureReplay;
import org.nextpull.intake.capture.CaptureWriter;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.SessionClock;
import org.nextpull.intake.wire.WireChain;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.plan.WireFacts;

/**
 * All of the way of a line: written to a pseudo-terminal, read, captured, framed, turned into a value; then the capture is played
 * again. The times from writing to value go to {@code target/line-to-value.txt} and are not judged here, for they depend on what else
 * the machine does.
 */
class LineToValueIT {
    /** {@code -Dnextpull.latency.s=60} makes it the run that the figures are taken from. */
    private static final int SECONDS = Integer.getInteger("nextpull.latency.s", 2);

    @ParameterizedTest
    @ValueSource(ints = {100, 5000})
    @Timeout(600)
    void everyLineBecomesAValueAndTheCaptureGivesTheSame(int linesASecond, @TempDir Path folder) throws Exception {
        int lines = linesASecond * SECONDS;
        SerialPorts ports = new SerialPorts();
        SessionClock clock = SessionClock.system();
        ArrivalQueue queue = new ArrivalQueue(clock);
        CaptureFolder captures = new CaptureFolder(folder.resolve("captures"));
        Rows live = new Rows(lines);
        try (PtyPair pair = PtyPair.plugIn(folder);
                Port far = ports.open(Port.Settings.usual(pair.far(), 115_200))
                        .value()
                        .orElseThrow();
                CaptureKeeper keeper = new CaptureKeeper();
                WireReader reader = WireReader.start(Port.Settings.usual(pair.near(), 115_200), ports, queue)) {
            String source = reader.settings().device();
            CaptureWriter capture = CaptureWriter.open(captures.fileOf(source), source, clock);
            keeper.add(capture);
            WireChain chain = chain(source, live);
            Thread sender = new Thread(() -> send(far, live.sentNs, linesASecond), "sender");
            boolean sending = false;
            while (live.count < lines) {
                Optional<Arrival> arrival = queue.take(100);
                if (arrival.isEmpty()) {
                    chain.tick(queue.now());
                    continue;
                }
                capture.received(arrival.get());
                chain.accept(arrival.get());
                if (arrival.get() instanceof Arrival.Connected && !sending) {
                    sending = true;
                    sender.start();
                }
            }
            chain.finish(queue.now());
            sender.join();
            live.write(linesASecond);

            Rows replayed = new Rows(lines);
            WireChain again = chain(source, replayed);
            try (CaptureReplay replay = captures.replay()) {
                for (Optional<Arrival> next = replay.next(); next.isPresent(); next = replay.next()) {
                    again.accept(next.get());
                }
            }
            again.finish(queue.now());
            assertThat(replayed.seen).isEqualTo(live.seen).hasSize(lines);
        }
    }

    private static WireChain chain(String source, Rows rows) {
        WireSource.LineSettings settings =
                new WireSource.LineSettings(WireFacts.Lines.SEPARATED, List.of("rpm", "torque [Nm]", "run"), 0, 0);
        return new WireChain(
                List.of(WireSource.port(source, settings, "115200 8N1")), LogHints.none(), new ColumnReader(), rows);
    }

    private static void send(Port port, AtomicLongArray sentNs, int linesASecond) {
        try {
            port.write("half\n".getBytes(StandardCharsets.US_ASCII));
            long start = System.nanoTime();
            for (int line = 0; line < sentNs.length(); line++) {
                long due = start + line * (1_000_000_000L / linesASecond);
                Await.moment(due);
                String text = String.format(Locale.ROOT, "%d,180.5,%d\r\n", 3000 + line % 4000, line);
                sentNs.set(line, System.nanoTime());
                port.write(text.getBytes(StandardCharsets.US_ASCII));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Rows implements WireChain.Listener {
        private static final Channel NUMBER = Channel.of(Role.RUN);

        private final AtomicLongArray sentNs;
        private final long[] tookNs;
        private final List<String> seen = new ArrayList<>();
        private int count;

        Rows(int lines) {
            this.sentNs = new AtomicLongArray(lines);
            this.tookNs = new long[lines];
        }

        @Override
        public void rows(String source, Samples samples) {
            long now = System.nanoTime();
            for (double number : samples.presentValues(NUMBER)) {
                assertThat((int) number).isEqualTo(count);
                tookNs[count] = now - sentNs.get(count);
                count++;
            }
        }

        @Override
        public void block(Block block) {
            Samples samples = block.samples();
            for (int row = 0; row < samples.rows(); row++) {
                seen.add(samples.value(Channel.of(Role.TIME), row) + " " + samples.value(NUMBER, row));
            }
        }

        @Override
        public void said(ArrivalTime at, Finding finding) {
            assertThat(finding.code().id()).doesNotContain("broken");
        }

        @Override
        public void fileComplete(Arrival.FileComplete file) {
            throw new AssertionError("no file is sent");
        }

        /** The start is left out: the columns are learnt and the code is compiled there. */
        void write(int linesASecond) throws IOException {
            long[] sorted = Arrays.copyOfRange(tookNs, Math.max(60, tookNs.length / 10), tookNs.length);
            Arrays.sort(sorted);
            String text = String.format(
                    Locale.ROOT,
                    "%d lines/s, %d lines: p50 %.0f us, p99 %.0f us, p99.9 %.0f us, worst %.0f us%n",
                    linesASecond,
                    sorted.length,
                    sorted[sorted.length / 2] / 1e3,
                    sorted[(int) (sorted.length * 0.99)] / 1e3,
                    sorted[(int) (sorted.length * 0.999)] / 1e3,
                    sorted[sorted.length - 1] / 1e3);
            Files.createDirectories(Path.of("target"));
            Files.writeString(
                    Path.of("target", "line-to-value.txt"), text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        }
    }
}
