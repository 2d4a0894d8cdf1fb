package org.nextpull.intake.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.Await;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.SessionClock;

/** The serial library on real pseudo-terminals. */
@Timeout(120)
class SerialPortsIT {
    private final SerialPorts ports = new SerialPorts();
    private final ArrivalQueue queue = new ArrivalQueue(SessionClock.system());

    @Test
    void portsAreListedByName() {
        assertThat(ports.list().value()).isPresent();
    }

    @Test
    void aNameThatLeadsNowhereIsSaid(@TempDir Path folder) {
        Outcome<Port> opened =
                ports.open(Port.Settings.usual(folder.resolve("none").toString(), 9600));
        assertThat(opened.findings())
                .singleElement()
                .extracting(finding -> finding.code())
                .isEqualTo(FindingCode.WIRE_NOT_THERE);
    }

    @Test
    void aPlainFileIsNoPort(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("log.csv"), "rpm\n");
        Outcome<Port> opened = ports.open(Port.Settings.usual(file.toString(), 9600));
        assertThat(opened.findings())
                .singleElement()
                .extracting(finding -> finding.code())
                .isEqualTo(FindingCode.WIRE_NOT_OPENED);
    }

    @Test
    void whatIsWrittenAtOneEndIsReadAtTheOther(@TempDir Path folder) throws Exception {
        try (PtyPair pair = PtyPair.plugIn(folder);
                Port far = open(pair.far());
                WireReader reader = WireReader.start(Port.Settings.usual(pair.near(), 115_200), ports, queue)) {
            assertThat(next()).isInstanceOf(Arrival.Connected.class);
            StringBuilder sent = new StringBuilder();
            for (int line = 0; line < 5000; line++) {
                sent.append("rpm=")
                        .append(line)
                        .append(";torque=")
                        .append(line * 2)
                        .append("\r\n");
            }
            byte[] bytes = sent.toString().getBytes(StandardCharsets.US_ASCII);
            far.write(bytes);
            assertThat(receive(bytes.length)).isEqualTo(bytes);
            assertThat(reader.settings().device()).isEqualTo(pair.near());
        }
    }

    @Test
    void aPortThatIsOpenAlreadyIsSaidToBeInUse(@TempDir Path folder) throws Exception {
        try (PtyPair pair = PtyPair.plugIn(folder);
                Port first = open(pair.near())) {
            Outcome<Port> second = ports.open(Port.Settings.usual(pair.near(), 115_200));
            assertThat(second.findings())
                    .singleElement()
                    .extracting(finding -> finding.code())
                    .isEqualTo(FindingCode.WIRE_IN_USE);
            first.write(new byte[] {1});
        }
    }

    @Test
    void unpluggedAndPluggedInAgainIsNoticedWithinASecondAndNothingBeforeIsLost(@TempDir Path folder) throws Exception {
        PtyPair pair = PtyPair.plugIn(folder);
        try (WireReader reader = WireReader.start(Port.Settings.usual(pair.near(), 115_200), ports, queue)) {
            assertThat(next()).isInstanceOf(Arrival.Connected.class);
            for (int cycle = 0; cycle < 3; cycle++) {
                byte[] bytes = ("before the plug was pulled " + cycle + "\n").getBytes(StandardCharsets.US_ASCII);
                try (Port far = open(pair.far())) {
                    far.write(bytes);
                    assertThat(receive(bytes.length)).isEqualTo(bytes);
                }
                pair.close();
                long pulled = System.nanoTime();
                assertThat(next())
                        .isInstanceOfSatisfying(
                                Arrival.Lost.class,
                                lost -> assertThat(lost.why()).isEqualTo(Arrival.Cause.UNPLUGGED));
                assertThat(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - pulled))
                        .isLessThan(1000);
                assertThat(next())
                        .isInstanceOfSatisfying(
                                Arrival.Trouble.class,
                                trouble -> assertThat(trouble.finding().code()).isEqualTo(FindingCode.WIRE_NOT_THERE));
                pair = PtyPair.plugIn(folder);
                assertThat(next()).isInstanceOf(Arrival.Connected.class);
            }
            assertThat(reader.settings().port().baud()).isEqualTo(115_200);
        } finally {
            pair.close();
        }
    }

    /** {@code -Dnextpull.soak.s=600} makes it the ten minutes that the figures are taken from. */
    @Test
    @Timeout(3600)
    void noByteIsLostAtAMegabyteASecond(@TempDir Path folder) throws Exception {
        long seconds = Long.getLong("nextpull.soak.s", 3);
        try (PtyPair pair = PtyPair.plugIn(folder);
                Port far = open(pair.far());
                WireReader reader = WireReader.start(Port.Settings.usual(pair.near(), 115_200), ports, queue)) {
            assertThat(next()).isInstanceOf(Arrival.Connected.class);
            long lines = seconds * 10_000;
            Thread sender = new Thread(() -> send(far, lines), "sender");
            sender.start();
            NumberedLines check = new NumberedLines();
            while (check.lines() < lines) {
                Arrival arrival = next();
                assertThat(arrival).isInstanceOf(Chunk.class);
                check.accept(((Chunk) arrival).toArray());
            }
            sender.join();
            assertThat(check.lines()).isEqualTo(lines);
            assertThat(reader.settings().port().byteNs()).isEqualTo(86_806);
        }
    }

    /** Lines of 100 bytes, 100 in a go, a go each hundredth of a second. */
    private static void send(Port port, long lines) {
        long start = System.nanoTime();
        try {
            for (long line = 0; line < lines; line += 100) {
                StringBuilder text = new StringBuilder();
                for (long each = line; each < line + 100; each++) {
                    text.append(NumberedLines.line(each));
                }
                port.write(text.toString().getBytes(StandardCharsets.US_ASCII));
                long due = start + (line + 100) * 100_000;
                Await.moment(due);
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private Port open(String device) {
        return ports.open(Port.Settings.usual(device, 115_200)).value().orElseThrow();
    }

    private Arrival next() throws InterruptedException {
        Optional<Arrival> arrival = queue.take(10_000);
        assertThat(arrival).as("nothing came for ten seconds").isPresent();
        return arrival.get();
    }

    private byte[] receive(int length) throws InterruptedException {
        ByteArrayOutputStream got = new ByteArrayOutputStream();
        while (got.size() < length) {
            Arrival arrival = next();
            assertThat(arrival).isInstanceOf(Chunk.class);
            got.writeBytes(((Chunk) arrival).toArray());
        }
        return got.toByteArray();
    }

    /** Checks that numbered lines come whole and in order. */
    private static final class NumberedLines {
        private static final String FILL = "x".repeat(100 - 13);

        private final StringBuilder unfinished = new StringBuilder();
        private long lines;

        static String line(long number) {
            return String.format(java.util.Locale.ROOT, "%010d", number) + FILL + "ok\n";
        }

        long lines() {
            return lines;
        }

        void accept(byte[] bytes) {
            unfinished.append(new String(bytes, StandardCharsets.US_ASCII));
            int from = 0;
            for (int end = unfinished.indexOf("\n"); end >= 0; end = unfinished.indexOf("\n", from)) {
                assertThat(unfinished.substring(from, end + 1)).isEqualTo(line(lines));
                lines++;
                from = end + 1;
            }
            unfinished.delete(0, from);
        }
    }
}
