package org.nextpull.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLongArray;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.Await;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.capture.CaptureFolder;
import org.nextpull.intake.capture.CaptureReplay;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.PtyPair;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.plan.WireFacts;

/**
 * What a session is measured by. The figures go to {@code target/live-figures.txt} and are not judged here, since they depend on what
 * else the machine does; that nothing is lost is.
 */
class LiveFiguresIT {
    /** {@code -Dnextpull.latency.s=60 -Dnextpull.soak.s=600 -Dnextpull.noise.s=60 -Dnextpull.day.h=8} make it the long run. */
    private static final int LATENCY_S = Integer.getInteger("nextpull.latency.s", 5);

    private static final int SOAK_S = Integer.getInteger("nextpull.soak.s", 2);
    private static final int NOISE_S = Integer.getInteger("nextpull.noise.s", 2);
    private static final double DAY_H = Double.parseDouble(System.getProperty("nextpull.day.h", "0.3"));

    private static final int ALARM_EVERY_S = 2;
    private static final double NS_A_US = 1e3;

    private static LiveSession.Setup setup(String device, Path captures, List<String> columns) {
        LiveIntake.Wire port = new LiveIntake.Wire(
                Port.Settings.usual(device, 115_200),
                new WireSource.LineSettings(WireFacts.Lines.SEPARATED, columns, 0, 0));
        return new LiveSession.Setup(
                HandDriven.plan("[limits]\nexhaust_c = 850\n"),
                new LiveIntake.Ports(List.of(port)),
                SessionFolders.Claim.of(captures).orElseThrow(),
                Optional.empty(),
                Keeper.none(),
                new SerialPorts(),
                LiveSession.Setup.Clock.system());
    }

    private static Port open(String device) {
        return new SerialPorts()
                .open(Port.Settings.usual(device, 115_200))
                .value()
                .orElseThrow();
    }

    /** Now and then a line passes the limit of the exhaust, seldom enough that the alarm before has cleared. */
    @ParameterizedTest
    @ValueSource(ints = {100, 5000})
    @Timeout(600)
    void everyAlarmOfALineReachesTheListener(int linesASecond, @TempDir Path temp) throws Exception {
        int lines = linesASecond * LATENCY_S;
        AtomicLongArray sentNs = new AtomicLongArray(lines);
        int every = linesASecond * ALARM_EVERY_S;
        long[] alarmNs = new long[lines / every + 1];
        long[] shownNs = new long[lines];
        int[] counts = new int[2];
        LiveSession.Listener listener = new LiveSession.Listener() {
            @Override
            public void alarm(Alarm.Event event, LiveState state) {
                if (event.kind() == Alarm.Event.Kind.SOUNDED && counts[0] < alarmNs.length) {
                    // the half line at the start is the first of the source
                    int line = (int) event.alarm().since().line() - 2;
                    alarmNs[counts[0]++] = System.nanoTime() - sentNs.get(line);
                }
            }

            @Override
            public void changed(LiveState state) {
                state.latest().stream()
                        .filter(value -> value.channel().equals(Channel.of(Role.RUN)))
                        .findFirst()
                        .filter(value -> counts[1] < shownNs.length && value.value() < sentNs.length())
                        .ifPresent(value -> shownNs[counts[1]++] = System.nanoTime() - sentNs.get((int) value.value()));
            }
        };
        try (PtyPair pair = PtyPair.plugIn(temp);
                Port far = open(pair.far())) {
            LiveSession.Setup setup =
                    setup(pair.near(), temp.resolve("session"), List.of("rpm", "torque [Nm]", "EGT [degC]", "run"));
            LiveSession session = LiveSession.start(setup, listener);
            try (session) {
                Heard.await(session, state -> state.links().get(0).link() == LiveState.LinkState.Link.CONNECTED);
                far.write("half\n".getBytes(StandardCharsets.US_ASCII));
                send(far, sentNs, linesASecond, every);
                Heard.await(session, state -> latestRun(state) == lines - 1);
            }
        }
        assertThat(counts[0]).isEqualTo((lines - 1) / every);
        write(linesASecond + " lines/s, line to alarm", alarmNs, counts[0]);
        write(linesASecond + " lines/s, age of the newest line in what is shown", shownNs, counts[1]);
    }

    private static void send(Port port, AtomicLongArray sentNs, int linesASecond, int every) throws IOException {
        long start = System.nanoTime();
        for (int line = 0; line < sentNs.length(); line++) {
            long due = start + line * (1_000_000_000L / linesASecond);
            Await.moment(due);
            boolean hot = line > 0 && line % every == 0;
            String text = String.format(Locale.ROOT, "%d,4.5,%d,%d\r\n", 1500, hot ? 900 : 600, line);
            sentNs.set(line, System.nanoTime());
            port.write(text.getBytes(StandardCharsets.US_ASCII));
        }
    }

    @Test
    @Timeout(3600)
    void noLineIsLostAtAMegabyteASecond(@TempDir Path temp) throws Exception {
        Path captures = temp.resolve("session");
        long lines = SOAK_S * 10_000L;
        try (PtyPair pair = PtyPair.plugIn(temp);
                Port far = open(pair.far())) {
            LiveSession session = LiveSession.start(
                    setup(pair.near(), captures, List.of("rpm", "torque [Nm]", "run", "-")),
                    new LiveSession.Listener() {});
            try (session) {
                Heard.await(session, state -> state.links().get(0).link() == LiveState.LinkState.Link.CONNECTED);
                soak(far, lines);
                Heard.await(session, state -> latestRun(state) == lines - 1);
                assertThat(session.state().notices())
                        .noneMatch(notice -> notice.finding().code() == FindingCode.WIRE_OVERRUN);
            }
        }
        assertThat(capturedLines(captures)).isEqualTo(lines);
        append("soak of " + SOAK_S + " s at 1 MB/s: " + lines + " lines, none lost");
    }

    private static double latestRun(LiveState state) {
        return state.latest().stream()
                .filter(value -> value.channel().role() == Role.RUN)
                .mapToDouble(LiveState.LatestValue::value)
                .findFirst()
                .orElse(-1);
    }

    /** Lines of 100 bytes, 100 in a go, a go each hundredth of a second. */
    private static void soak(Port port, long lines) throws IOException {
        String fill = "x".repeat(76);
        long start = System.nanoTime();
        for (long line = 0; line < lines; line += 100) {
            StringBuilder text = new StringBuilder();
            for (long each = line; each < line + 100; each++) {
                text.append(String.format(Locale.ROOT, "1500,4.5,%012d,%s,\n", each, fill)
                                .substring(0, 99))
                        .append('\n');
            }
            port.write(text.toString().getBytes(StandardCharsets.US_ASCII));
            long due = start + (line + 100) * 100_000;
            Await.moment(due);
        }
    }

    private static long capturedLines(Path captures) throws IOException {
        long lines = 0;
        try (CaptureReplay replay = new CaptureFolder(captures).replay()) {
            for (Optional<Arrival> next = replay.next(); next.isPresent(); next = replay.next()) {
                if (next.get() instanceof Chunk chunk && !chunk.source().equals(OperatorLines.SOURCE)) {
                    for (byte one : chunk.toArray()) {
                        lines += one == '\n' ? 1 : 0;
                    }
                }
            }
        }
        return lines;
    }

    @Test
    @Timeout(600)
    void afterRandomBytesTheAlarmsStillAnswer(@TempDir Path temp) throws Exception {
        Heard heard = new Heard();
        Random random = new Random(5);
        try (PtyPair pair = PtyPair.plugIn(temp);
                Port far = open(pair.far())) {
            LiveSession session = LiveSession.start(
                    setup(pair.near(), temp.resolve("session"), List.of("rpm", "torque [Nm]", "EGT [degC]")), heard);
            try (session) {
                Heard.await(session, state -> state.links().get(0).link() == LiveState.LinkState.Link.CONNECTED);
                byte[] noise = new byte[1000];
                long end = System.nanoTime() + NOISE_S * 1_000_000_000L;
                while (System.nanoTime() < end) {
                    random.nextBytes(noise);
                    far.write(noise);
                    Await.pass(Duration.ofMillis(1));
                }
                heard.alarms.clear();
                far.write("\n".getBytes(StandardCharsets.US_ASCII));
                Thread sender = new Thread(() -> hot(far), "sender");
                sender.start();
                Alarm.Event alarm = heard.alarms.poll(30, java.util.concurrent.TimeUnit.SECONDS);
                assertThat(alarm).as("an alarm after the noise").isNotNull();
                sender.join();
            }
            assertThat(heard.heard(FindingCode.LIVE_FAULT)).isFalse();
        }
    }

    private static void hot(Port port) {
        try {
            for (int line = 0; line < 1000; line++) {
                port.write(("1500,4.5," + (line % 2 == 0 ? 900 : 600) + "\n").getBytes(StandardCharsets.US_ASCII));
                Await.pass(Duration.ofMillis(10));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A day at 100 lines a second with a pull every twenty minutes, through all but ports and threads. */
    @Test
    @Timeout(3600)
    void theMemoryOfALongDay() throws IOException {
        HandDriven bench = new HandDriven(
                HandDriven.plan("[limits]\nexhaust_c = 850\n"),
                "rpm,torque [Nm],throttle [%],EGT [degC],coolant temp [degC]",
                (rpm, torque, throttle) -> HandDriven.text("%.1f,%.2f,%.0f,700,85", rpm, torque, throttle));
        double dayS = DAY_H * 3600;
        long early = 0;
        while (bench.nowS < dayS) {
            bench.pull(1);
            double next = Math.min(dayS, bench.nowS + 1200);
            while (bench.nowS < next) {
                bench.idle(10);
                bench.captured.clear();
                if (early == 0 && bench.nowS > Math.min(600, dayS / 2)) {
                    early = heldKb();
                }
            }
        }
        append(String.format(
                Locale.ROOT,
                "heap: %d kB after %.0f min, %d kB after %.1f h with %d pulls",
                early,
                Math.min(600, dayS / 2) / 60,
                heldKb(),
                DAY_H,
                bench.state().result().pulls().size()));
        assertThat(bench.state().result().pulls()).isNotEmpty();
    }

    private static long heldKb() {
        long least = Long.MAX_VALUE;
        for (int turn = 0; turn < 5; turn++) {
            System.gc();
            least = Math.min(
                    least,
                    Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory());
        }
        return least / 1024;
    }

    private static void write(String what, long[] tookNs, int count) throws IOException {
        long[] sorted = Arrays.copyOfRange(tookNs, count / 10, count);
        Arrays.sort(sorted);
        if (sorted.length == 0) {
            return;
        }
        append(String.format(
                Locale.ROOT,
                "%s (%d): p50 %.0f us, p99 %.0f us, p99.9 %.0f us, worst %.0f us",
                what,
                sorted.length,
                sorted[sorted.length / 2] / NS_A_US,
                sorted[(int) (sorted.length * 0.99)] / NS_A_US,
                sorted[(int) (sorted.length * 0.999)] / NS_A_US,
                sorted[sorted.length - 1] / NS_A_US));
    }

    private static void append(String line) throws IOException {
        Files.createDirectories(Path.of("target"));
        Files.writeString(
                Path.of("target", "live-figures.txt"),
                line + System.lineSeparator(),
                StandardOpenOption.CREATE,
                StandardOpenOption.APPEND);
    }
}
