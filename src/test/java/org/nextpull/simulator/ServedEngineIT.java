package org.nextpull.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Finding;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.PtyPair;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.unit.Advance;

/**
 * The model engine sends on pseudo-terminals, a live reader reads them, and the pulls that come out are those that were run. The reader's
 * clock runs as much faster as the engine does.
 */
class ServedEngineIT {
    private static final double SPEED = 6;
    private static final long SEED = 7;
    private static final double TORQUE_PERCENT = 0.3;
    private static final double LAMBDA = 0.006;

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
            to_rpm = 6000
            rows_every_rpm = 1000
            [timing]
            start_deg = 20
            least_deg = 14
            most_deg = 36
            [log]
            lambda_delay_s = 0.15
            """;

    private static final String SENTENCES = """
            [[wire]]
            baud = 921600
            lines = "sentence"
            columns = ["$TXENG", "rpm", "torque [lbf.ft]", "throttle [%]", "-", "advance [deg]", "$TXMIX", "AFR"]
            """;

    private static final String TWO = """
            [[wire]]
            device = "near"
            columns = ["rpm", "torque [N.m]", "throttle [%]", "advance [deg]", "knock count"]
            [[wire]]
            device = "other"
            baud = 921600
            lines = "pairs"
            delay_s = 0.3
            """;

    static Stream<Arguments> wires() {
        return Stream.of(
                Arguments.of("a header line", PLAN, 1),
                Arguments.of("pairs", PLAN + "[[wire]]\nbaud = 921600\nlines = \"pairs\"\n", 1),
                Arguments.of("sentences", PLAN.replace("[log]", "[log]\nafr_scale = 14.7") + SENTENCES, 1),
                Arguments.of("two wires", PLAN + TWO, 2));
    }

    private static EngineSetting advance(double deg) {
        return EngineSetting.ofNumbers(Optional.of(Advance.ofDeg(deg)), Optional.empty(), Optional.empty());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wires")
    @Timeout(120)
    void whatComesOutOfTheWireIsWhatWasRun(String name, String text, int ports, @TempDir Path folder) throws Exception {
        SweepPlan plan = PlanText.read(text, name).value().orElseThrow();
        Practice run = Practice.start(plan, SEED).value().orElseThrow();
        run.pull(advance(20));
        run.pull(advance(24));
        List<MeasuredPull> wanted = run.result().pulls();

        List<MeasuredPull> read = read(plan, ports, folder);
        assertThat(read).hasSize(2);
        for (int index = 0; index < 2; index++) {
            MeasuredPull expected = wanted.get(index);
            MeasuredPull measured = read.get(index);
            assertThat(measured.isUsed()).isTrue();
            assertThat(measured.setting().advance())
                    .isEqualTo(expected.setting().advance());
            assertThat(torque(measured)).isCloseTo(torque(expected), within(torque(expected) * TORQUE_PERCENT / 100));
            assertThat(measured.setting().lambda().orElseThrow().value())
                    .isCloseTo(expected.setting().lambda().orElseThrow().value(), within(LAMBDA));
        }
    }

    private static double torque(MeasuredPull pull) {
        return pull.figures().orElseThrow().meanTorque().orElseThrow().newtonMetres();
    }

    private static List<MeasuredPull> read(SweepPlan plan, int ports, Path folder) throws Exception {
        List<PtyPair> pairs = new ArrayList<>();
        List<Port> near = new ArrayList<>();
        try {
            for (int index = 0; index < ports; index++) {
                pairs.add(PtyPair.plugIn(Files.createDirectory(folder.resolve("wire" + index))));
                near.add(new SerialPorts()
                        .open(Port.Settings.usual(pairs.get(index).near(), 115_200))
                        .value()
                        .orElseThrow());
            }
            List<String> far = pairs.stream().map(PtyPair::far).toList();
            Told told = new Told();
            ServedEngine engine = ServedEngine.start(new ServeOrder(plan, SEED, far, SPEED), new SerialPorts(), told)
                    .value()
                    .orElseThrow();
            engine.tell(new ServeCommand.Idle(3));
            engine.tell(new ServeCommand.Pull());
            engine.tell(new ServeCommand.Set(advance(24)));
            engine.tell(new ServeCommand.Pull());
            engine.tell(new ServeCommand.Idle(3));
            engine.tell(new ServeCommand.End());
            WireReading reading = new WireReading(plan, far);
            receive(near, far, reading, told.pulls);
            engine.awaitEnd();
            assertThat(told.said).isEmpty();
            assertThat(engine.debrief().pulls()).isEqualTo(2);
            return Session.evaluate(SessionInput.of(plan, List.of(reading.recording()), List.of()))
                    .pulls();
        } finally {
            near.forEach(Port::close);
            pairs.forEach(PtyPair::close);
        }
    }

    private static void receive(List<Port> near, List<String> names, WireReading reading, CountDownLatch pulls)
            throws IOException {
        long start = System.nanoTime();
        names.forEach(name -> reading.connected(name, 0));
        byte[] buffer = new byte[8192];
        boolean quiet = false;
        double now = 0;
        while (!(quiet && pulls.getCount() == 0)) {
            quiet = true;
            for (int index = 0; index < near.size(); index++) {
                int count = near.get(index).read(buffer);
                now = (System.nanoTime() - start) / 1e9 * SPEED;
                if (count > 0) {
                    quiet = false;
                    reading.bytes(names.get(index), now, buffer, count);
                }
            }
            reading.tick(now);
        }
        reading.finish(now);
    }

    private static final class Told implements ServedEngine.Listener {
        private final List<Finding> said = new ArrayList<>();
        private final CountDownLatch pulls = new CountDownLatch(2);

        @Override
        public void isSet(EngineSetting setting) {
            assertThat(setting.advance().orElseThrow().deg()).isEqualTo(24);
        }

        @Override
        public void pullBegan(int number, EngineSetting setting) {
            assertThat(setting.advance().orElseThrow().deg()).isEqualTo(number == 1 ? 20 : 24);
        }

        @Override
        public void pullEnded(int number, boolean cutShort) {
            assertThat(cutShort).isFalse();
            pulls.countDown();
        }

        @Override
        public void said(Finding finding) {
            said.add(finding);
        }
    }
}
