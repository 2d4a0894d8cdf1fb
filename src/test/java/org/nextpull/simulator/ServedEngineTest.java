package org.nextpull.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nextpull.Await;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.serial.Port;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.unit.Advance;

/** The served engine on ports that only keep what is written to them. */
@Timeout(60)
class ServedEngineTest {
    private static final String PLAN = """
            [engine]
            displacement_l = 1.6
            cylinders = 4
            [dyno]
            kind = "engine-brake"
            torque_at = "crank"
            inertia_in_log = true
            [band]
            from_rpm = 4000
            to_rpm = 5000
            rows_every_rpm = 500
            [timing]
            start_deg = 20
            least_deg = 14
            most_deg = 36
            """;

    private static final String RPM_ONLY = "[[wire]]\nbaud = 921600\ncolumns = [\"rpm\", \"throttle\"]\n";

    private static SweepPlan plan(String text) {
        return PlanText.read(text, "plan.toml").value().orElseThrow();
    }

    /** A port that keeps what is written, refuses bytes, or breaks. */
    private static final class Memory implements Port {
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private volatile boolean full;
        private volatile boolean gone;
        private volatile boolean closed;

        @Override
        public int read(byte[] buffer) throws IOException {
            if (gone) {
                throw new IOException("gone");
            }
            return 0;
        }

        @Override
        public void write(byte[] some) throws IOException {
            if (full || gone) {
                throw new NotTakenException();
            }
            bytes.writeBytes(some);
        }

        @Override
        public void close() {
            closed = true;
        }

        List<String> lines() {
            return bytes.toString(StandardCharsets.ISO_8859_1).lines().toList();
        }
    }

    private static final class Told implements ServedEngine.Listener {
        private final List<String> heard = Collections.synchronizedList(new ArrayList<>());

        @Override
        public void isSet(EngineSetting setting) {
            heard.add("set " + setting.advance().orElseThrow().deg());
        }

        @Override
        public void pullBegan(int number, EngineSetting setting) {
            heard.add("began " + number);
        }

        @Override
        public void pullEnded(int number, boolean cutShort) {
            heard.add((cutShort ? "cut " : "ended ") + number);
        }

        @Override
        public void said(Finding finding) {
            heard.add(finding.code().id());
        }
    }

    private final Told told = new Told();
    private final Memory port = new Memory();

    private ServedEngine start(String text, double speed) {
        Port.Opener opener = settings -> Outcome.of(port);
        return ServedEngine.start(new ServeOrder(plan(text), 3, List.of("a"), speed), opener, told)
                .value()
                .orElseThrow();
    }

    private List<FindingCode> refused(String text, List<String> ports) {
        Port.Opener opener = settings -> Outcome.of(port);
        return ServedEngine.start(new ServeOrder(plan(text), 3, ports, 1), opener, told).findings().stream()
                .map(Finding::code)
                .toList();
    }

    private static ServeCommand.Set advance(double deg) {
        return new ServeCommand.Set(
                EngineSetting.ofNumbers(Optional.of(Advance.ofDeg(deg)), Optional.empty(), Optional.empty()));
    }

    private static double rpm(String line) {
        return Double.parseDouble(line.substring(0, line.indexOf(',')));
    }

    private static void tell(ServedEngine engine, ServeCommand... commands) {
        for (ServeCommand command : commands) {
            engine.tell(command);
        }
    }

    @Test
    void whatIsToldIsDoneInItsOrder() throws InterruptedException {
        ServedEngine engine = start(PLAN + RPM_ONLY, 100);
        tell(
                engine,
                advance(22),
                new ServeCommand.Pull(),
                advance(50),
                advance(24),
                new ServeCommand.Pull(),
                new ServeCommand.End());
        engine.awaitEnd();
        assertThat(told.heard)
                .containsExactly(
                        "set 22.0", "began 1", "ended 1", "rig-setting-outside", "set 24.0", "began 2", "ended 2");
        assertThat(port.closed).isTrue();
        assertThat(engine.debrief().left().orElseThrow().advanceDeg()).isEqualTo(24);
        assertThat(engine.truth()).contains("pulls = 2", "[left]", "advance_deg = 24.0");
        List<Double> speeds = port.lines().stream().map(line -> rpm(line)).toList();
        assertThat(speeds.get(0)).isBetween(1050.0, 1150.0);
        assertThat(speeds).anyMatch(rpm -> rpm > 5000);
    }

    @Test
    void liftingOffCutsThePull() throws InterruptedException {
        ServedEngine engine = start(PLAN + RPM_ONLY, 1);
        tell(engine, new ServeCommand.Pull());
        Await.until("the pull began", () -> told.heard.contains("began 1"));
        tell(engine, new ServeCommand.Lift(), new ServeCommand.End());
        engine.awaitEnd();
        assertThat(told.heard).containsExactly("began 1", "cut 1");
        assertThat(port.lines()).noneMatch(line -> rpm(line) > 3000);
    }

    @Test
    void whileItIsSilentNothingIsSent() throws InterruptedException {
        ServedEngine engine = start(PLAN + RPM_ONLY, 20);
        tell(
                engine,
                new ServeCommand.Trouble(ServeCommand.Trouble.Kind.SILENCE, 1000),
                new ServeCommand.Idle(5),
                new ServeCommand.End());
        engine.awaitEnd();
        assertThat(port.lines()).hasSizeLessThan(20);
    }

    @Test
    void garbageIsNoLineAnyMore() throws InterruptedException {
        ServedEngine engine = start(PLAN + "[[wire]]\nlines = \"sentence\"\ncolumns = [\"$TXENG\", \"rpm\"]\n", 50);
        tell(
                engine,
                new ServeCommand.Idle(10),
                new ServeCommand.Trouble(ServeCommand.Trouble.Kind.GARBAGE, 1000),
                new ServeCommand.End());
        engine.awaitEnd();
        assertThat(port.lines()).anyMatch(line -> !line.matches("\\$TXENG,[0-9]+\\*[0-9A-F]{2}"));
    }

    @Test
    void aHeaderIsSentAgainForWhoeverComesLater() throws InterruptedException {
        ServedEngine engine = start(PLAN, 100);
        tell(engine, new ServeCommand.Idle(65), new ServeCommand.End());
        engine.awaitEnd();
        assertThat(port.lines().stream().filter(line -> line.startsWith("Time [s],Engine speed [rpm],")))
                .hasSize(4);
        assertThat(told.heard).containsExactly("rig-wire-too-slow");
    }

    @Test
    void aPortThatGoesAwayEndsTheDay() throws InterruptedException {
        ServedEngine engine = start(PLAN + RPM_ONLY, 10);
        port.gone = true;
        engine.awaitEnd();
        assertThat(told.heard).containsExactly("rig-port-gone");
        assertThat(port.closed).isTrue();
    }

    @Test
    void aPortThatNobodyReadsIsSaidAndHoldsNothingUp() throws InterruptedException {
        ServedEngine engine = start(PLAN + RPM_ONLY, 100);
        port.full = true;
        tell(engine, new ServeCommand.Pull(), new ServeCommand.End());
        engine.awaitEnd();
        assertThat(told.heard).containsExactlyInAnyOrder("began 1", "ended 1", "rig-nobody-reads");
    }

    @Test
    void stoppingEndsItInTheMiddleOfAPull() throws InterruptedException {
        ServedEngine engine = start(PLAN + RPM_ONLY, 1);
        tell(engine, new ServeCommand.Pull());
        engine.stop();
        engine.awaitEnd();
        assertThat(told.heard).doesNotContain("ended 1");
    }

    @ParameterizedTest
    @CsvSource({
        "'[\"rpm\", \"fuel\"]', rig-column-not-measured",
        "'[\"rpm\", \"roller speed\"]', rig-column-not-measured",
        "'[\"rpm\", \"banana\"]', rig-column-not-measured"
    })
    void aColumnThatTheEngineHasNothingForIsRefused(String columns, String code) {
        assertThat(refused(PLAN + "[[wire]]\ncolumns = " + columns + "\n", List.of("a")))
                .extracting(FindingCode::id)
                .containsExactly(code);
    }

    @Test
    void portsAndWiresMustBeOfOneNumber() {
        assertThat(refused(PLAN, List.of("a", "b"))).containsExactly(FindingCode.RIG_PORTS_DIFFER);
        String two = "[[wire]]\ndevice = \"x\"\n[[wire]]\ndevice = \"y\"\n";
        assertThat(refused(PLAN + two, List.of("a"))).containsExactly(FindingCode.RIG_PORTS_DIFFER);
    }

    @Test
    void onePortThatCannotBeHadClosesTheOthers() {
        String two = "[[wire]]\ndevice = \"x\"\n[[wire]]\ndevice = \"y\"\n";
        Port.Opener opener = settings -> settings.device().equals("a")
                ? Outcome.of(port)
                : Outcome.failed(
                        Finding.error(FindingCode.WIRE_IN_USE, org.nextpull.finding.Place.inFile(settings.device())));
        Outcome<ServedEngine> outcome =
                ServedEngine.start(new ServeOrder(plan(PLAN + two), 3, List.of("a", "b"), 1), opener, told);
        assertThat(outcome.findings()).extracting(Finding::code).containsExactly(FindingCode.WIRE_IN_USE);
        assertThat(port.closed).isTrue();
    }
}
