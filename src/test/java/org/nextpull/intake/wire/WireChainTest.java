package org.nextpull.intake.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.WireFacts;

class WireChainTest {
    private static final String BRAKE = "/dev/ttyUSB0";
    private static final String GAUGE = "/dev/ttyUSB1";

    @Test
    void linesUnderAHeaderLineBecomeSamplesInTheProjectsUnits() {
        Played played = new Played(port(BRAKE, WireFacts.Lines.SEPARATED, 0));
        played.connected(BRAKE, 0)
                .text(BRAKE, 0.1, "00,99\r\nrpm [1/min],torque [lb-ft],coolant [C]\r\n")
                .text(BRAKE, 0.2, "3000,100,85\r\n3100,101,8")
                .text(BRAKE, 0.3, "6\r\n3200,102,87\r\n")
                .finish(1);
        assertThat(played.values(Role.ENGINE_SPEED)).containsExactly(3000.0, 3100.0, 3200.0);
        assertThat(played.values(Role.TORQUE).get(0)).isCloseTo(135.58, within(0.01));
        assertThat(played.values(Role.COOLANT_TEMPERATURE).get(0)).isCloseTo(358.15, within(1e-9));
        assertThat(played.values(Role.TIME)).startsWith(0.2, 0.3).isSorted().doesNotHaveDuplicates();
        assertThat(played.chain().columns(BRAKE)).hasSize(3);
    }

    @Test
    void theFirstLineAfterTheConnectionIsHalfALineAndDropped() {
        Played played = new Played(port(BRAKE, WireFacts.Lines.SEPARATED, 0, "rpm", "torque [Nm]"));
        played.connected(BRAKE, 0)
                .text(BRAKE, 0.1, "00,180\n3100,181\n")
                .accept(new Arrival.Lost(BRAKE, Played.at(0.2), Arrival.Cause.UNPLUGGED, 0))
                .connected(BRAKE, 0.5)
                .text(BRAKE, 0.6, "3,182\n3300,183\n")
                .finish(1);
        assertThat(played.values(Role.ENGINE_SPEED)).containsExactly(3100.0, 3300.0);
        assertThat(played.codes())
                .containsSubsequence(
                        FindingCode.WIRE_CONNECTED, FindingCode.WIRE_UNPLUGGED, FindingCode.WIRE_CONNECTED);
    }

    @Test
    void noiseOfManyLengthsIsSaidOnceAHeader() {
        Played played = new Played(port(BRAKE, WireFacts.Lines.SEPARATED, 0));
        played.connected(BRAKE, 0)
                .text(BRAKE, 0.1, "x\nrpm\n")
                .text(BRAKE, 0.2, ("1,2\n".repeat(20) + "3000\n").repeat(5))
                .finish(1);
        assertThat(played.codes()).containsOnlyOnce(FindingCode.WIRE_FIELDS_DIFFER);
    }

    @Test
    void aSemicolonLeavesTheCommaToTheNumbers() {
        Played played = new Played(port(BRAKE, WireFacts.Lines.SEPARATED, 0));
        played.connected(BRAKE, 0)
                .text(BRAKE, 0.1, "x\nDrehzahl;Drehmoment;Lambda\n1/min;Nm;-\n")
                .text(BRAKE, 0.2, "3000,5;180,25;0,875\n")
                .finish(1);
        assertThat(played.values(Role.ENGINE_SPEED)).containsExactly(3000.5);
        assertThat(played.values(Role.TORQUE)).containsExactly(180.25);
        assertThat(played.values(Role.LAMBDA)).containsExactly(0.875);
    }

    @Test
    void bytesOfOneRunArrivedOneAfterTheOther() {
        WireSource.LineSettings slow =
                new WireSource.LineSettings(WireFacts.Lines.SEPARATED, List.of("rpm", "torque [Nm]"), 0, 1_041_667);
        Played played = new Played(WireSource.port(BRAKE, slow, "9600 8N1"));
        played.connected(BRAKE, 0).text(BRAKE, 1, "x\n3000,180\n3100,181\n").finish(2);
        List<Double> times = played.values(Role.TIME);
        assertThat(times.get(1)).isEqualTo(1.0);
        assertThat(times.get(1) - times.get(0)).isCloseTo(9 * 0.001041667, within(1e-9));
    }

    @Test
    void pairsFindTheirColumnsByName() {
        Played played = new Played(port(BRAKE, WireFacts.Lines.PAIRS, 0));
        played.connected(BRAKE, 0).text(BRAKE, 0.1, "pm=1\n");
        for (int line = 0; line < 40; line++) {
            played.text(BRAKE, 0.2 + line * 0.01, "rpm=" + (3000 + line) + " torque[Nm]=180.5 lambda=0.9\n");
        }
        played.text(BRAKE, 0.7, "lambda=0.8;rpm=4000\n")
                .text(BRAKE, 0.8, "rpm=4100 oil_temp[C]=90\n")
                .finish(1);
        assertThat(played.values(Role.ENGINE_SPEED))
                .hasSize(42)
                .startsWith(3000.0)
                .endsWith(4000.0, 4100.0);
        assertThat(played.values(Role.LAMBDA)).hasSize(41).endsWith(0.8);
        assertThat(played.values(Role.OIL_TEMPERATURE)).containsExactly(363.15);
    }

    @Test
    void sentencesOfSeveralAddressesAreMergedIntoOneRow() {
        Played played = new Played(
                port(BRAKE, WireFacts.Lines.SENTENCE, 0, "$TXENG", "rpm", "torque [Nm]", "$TXMIX", "lambda"));
        played.connected(BRAKE, 0);
        for (int line = 0; line < 400; line++) {
            double at = 0.1 + line * 0.01;
            played.text(BRAKE, at, SentenceFrame.of("TXENG," + (3000 + line) + ",180.5"));
            if (line % 5 == 0) {
                played.text(
                        BRAKE, at + 0.001, SentenceFrame.of(String.format(Locale.ROOT, "TXMIX,%.4f", 0.8 + at / 100)));
                played.text(BRAKE, at + 0.002, SentenceFrame.of("TXOTHER,1,2,3"));
            }
        }
        played.finish(5);
        assertThat(played.values(Role.ENGINE_SPEED)).hasSize(400);
        assertThat(played.values(Role.LAMBDA)).hasSizeGreaterThan(380);
        for (int row = 50; row < 350; row++) {
            double when = played.value(row, Role.TIME).orElseThrow();
            assertThat(played.value(row, Role.LAMBDA).orElseThrow()).isCloseTo(0.8 + when / 100, within(2e-4));
        }
        assertThat(played.codes()).doesNotContain(FindingCode.WIRE_CHECKSUMS_WRONG);
    }

    @Test
    void aLoggersOwnTimeTakesTheJitterOutOfTheRows() {
        Played played = new Played(port(BRAKE, WireFacts.Lines.SEPARATED, 0, "time [s]", "rpm", "torque [Nm]"));
        Random random = new Random(4);
        played.connected(BRAKE, 0).text(BRAKE, 0.1, "x\n");
        for (int line = 0; line < 1000; line++) {
            double written = 77 + line * 0.01;
            played.text(
                    BRAKE,
                    1 + line * 0.01 + random.nextDouble() * 0.009,
                    String.format(Locale.ROOT, "%.2f,%d,180\n", written, 3000 + line));
        }
        played.finish(20);
        List<Double> times = played.values(Role.TIME);
        assertThat(times).hasSize(1000);
        for (int row = 200; row < 1000; row++) {
            assertThat(times.get(row) - times.get(row - 1)).isCloseTo(0.01, within(5e-5));
            assertThat(times.get(row)).isCloseTo(1 + row * 0.01 + 0.0045, within(2e-3));
        }
    }

    @Test
    void aLoggerThatStartsAgainGoesOnInTheTimeOfTheSession() {
        Played played = new Played(port(BRAKE, WireFacts.Lines.SEPARATED, 0, "time [s]", "rpm", "torque [Nm]"));
        played.connected(BRAKE, 0).text(BRAKE, 0.1, "x\n");
        for (int line = 0; line < 100; line++) {
            played.text(BRAKE, 1 + line * 0.1, (500 + line * 0.1) + ",3000,180\n");
        }
        for (int line = 0; line < 100; line++) {
            played.text(BRAKE, 60 + line * 0.1, (line * 0.1) + ",3000,180\n");
        }
        played.finish(99);
        List<Double> times = played.values(Role.TIME);
        assertThat(times.get(99)).isCloseTo(10.9, within(0.01));
        assertThat(times.get(100)).isCloseTo(60, within(0.01));
        assertThat(times.get(199)).isCloseTo(69.9, within(0.01));
    }

    /** A wideband that reports 0.3 s late beside a brake: each row has the lambda of its own moment. */
    @Test
    void theDelayOfASourceIsTakenOut() {
        Played played = new Played(
                port(BRAKE, WireFacts.Lines.SEPARATED, 0, "rpm", "torque [Nm]"),
                port(GAUGE, WireFacts.Lines.SEPARATED, 0.3, "lambda"));
        played.connected(BRAKE, 0)
                .connected(GAUGE, 0.001)
                .text(BRAKE, 0.01, "x\n")
                .text(GAUGE, 0.011, "x\n");
        for (int tick = 0; tick < 1000; tick++) {
            double at = 0.02 + tick * 0.01;
            played.text(BRAKE, at, (3000 + tick) + ",180\n");
            if (tick % 5 == 0) {
                played.text(GAUGE, at + 0.003, String.format(Locale.ROOT, "%.5f\n", lambda(at + 0.003 - 0.3)));
            }
        }
        played.finish(12);
        assertThat(played.values(Role.ENGINE_SPEED)).hasSize(1000);
        int checked = 0;
        for (int row = 100; row < 960; row++) {
            double when = played.value(row, Role.TIME).orElseThrow();
            assertThat(played.value(row, Role.LAMBDA).orElseThrow()).isCloseTo(lambda(when), within(3e-4));
            checked++;
        }
        assertThat(checked).isEqualTo(860);
    }

    @Test
    void aSourceThatFallsSilentLeavesItsCellsEmptyAndTheOtherGoesOn() {
        Played played = new Played(
                port(BRAKE, WireFacts.Lines.SEPARATED, 0, "rpm", "torque [Nm]"),
                port(GAUGE, WireFacts.Lines.SEPARATED, 0, "lambda"));
        played.connected(BRAKE, 0)
                .connected(GAUGE, 0.001)
                .text(BRAKE, 0.01, "x\n")
                .text(GAUGE, 0.011, "x\n");
        for (int tick = 0; tick < 1000; tick++) {
            double at = 0.02 + tick * 0.01;
            played.text(BRAKE, at, (3000 + tick) + ",180\n");
            if (tick % 5 == 0 && at < 5) {
                played.text(GAUGE, at + 0.003, "0.87\n");
            }
        }
        played.finish(12);
        assertThat(played.values(Role.ENGINE_SPEED)).hasSize(1000);
        assertThat(played.values(Role.LAMBDA)).hasSizeBetween(480, 560);
        assertThat(played.codes()).contains(FindingCode.WIRE_SILENT);
    }

    @Test
    void whereTheFastestSourceStopsAnotherGivesTheClock() {
        Played played = new Played(
                port(BRAKE, WireFacts.Lines.SEPARATED, 0, "rpm", "torque [Nm]"),
                port(GAUGE, WireFacts.Lines.SEPARATED, 0, "lambda"));
        played.connected(BRAKE, 0)
                .connected(GAUGE, 0.001)
                .text(BRAKE, 0.01, "x\n")
                .text(GAUGE, 0.011, "x\n");
        for (int tick = 0; tick < 2000; tick++) {
            double at = 0.02 + tick * 0.01;
            if (at < 8) {
                played.text(BRAKE, at, (3000 + tick) + ",180\n");
            }
            if (tick % 5 == 0) {
                played.text(GAUGE, at + 0.003, "0.87\n");
            }
        }
        played.finish(25);
        List<Double> times = played.values(Role.TIME);
        assertThat(times).isSorted().doesNotHaveDuplicates();
        assertThat(times.get(times.size() - 1)).isGreaterThan(19);
        assertThat(times.stream().filter(when -> when > 12)).hasSizeBetween(150, 170);
    }

    @Test
    void eachKnockEventIsCountedInOneRow() {
        Played played = new Played(
                port(BRAKE, WireFacts.Lines.SEPARATED, 0, "rpm", "torque [Nm]"),
                port(GAUGE, WireFacts.Lines.SEPARATED, 0, "knock events", "lambda"));
        played.connected(BRAKE, 0)
                .connected(GAUGE, 0.001)
                .text(BRAKE, 0.01, "x\n")
                .text(GAUGE, 0.011, "x\n");
        Random random = new Random(3);
        int events = 0;
        for (int tick = 0; tick < 1000; tick++) {
            double at = 0.02 + tick * 0.01;
            played.text(BRAKE, at, (3000 + tick) + ",180\n");
            if (tick % 4 == 0) {
                int knocks = random.nextInt(10) == 0 ? 1 + random.nextInt(3) : 0;
                events += tick >= 100 && tick < 900 ? knocks : 0;
                played.text(GAUGE, at + 0.003, (tick >= 100 && tick < 900 ? knocks : 0) + ",0.9\n");
            }
        }
        played.finish(12);
        assertThat(played.values(Role.KNOCK_EVENTS).stream()
                        .mapToDouble(each -> each)
                        .sum())
                .isEqualTo(events)
                .isPositive();
    }

    @Test
    void aChannelThatTwoSourcesSendIsTwoSensors() {
        Played played = new Played(
                port(BRAKE, WireFacts.Lines.SEPARATED, 0, "rpm", "lambda"),
                port(GAUGE, WireFacts.Lines.SEPARATED, 0, "lambda"));
        played.connected(BRAKE, 0)
                .connected(GAUGE, 0.001)
                .text(BRAKE, 0.01, "x\n")
                .text(GAUGE, 0.011, "x\n");
        for (int tick = 0; tick < 500; tick++) {
            double at = 0.02 + tick * 0.01;
            played.text(BRAKE, at, (3000 + tick) + ",0.90\n");
            if (tick % 5 == 0) {
                played.text(GAUGE, at + 0.001, "0.95\n");
            }
        }
        played.finish(12);
        assertThat(played.values(Role.LAMBDA)).contains(0.90).doesNotContain(0.95);
        assertThat(played.valuesOf(new Channel(Role.LAMBDA, 2))).contains(0.95).doesNotContain(0.90);
        assertThat(played.codes()).contains(FindingCode.WIRE_CHANNEL_TWICE);
    }

    /** The same arrivals give the same rows, however often the chain was told the time between them. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void whatComesOutDependsOnTheArrivalsAlone(long seed) {
        List<Arrival> arrivals = arrivals(seed);
        Played asLive = session();
        Random random = new Random(seed + 100);
        double last = 0;
        for (Arrival arrival : arrivals) {
            double next = arrival.at().seconds();
            while (random.nextInt(3) > 0 && last + 0.01 < next) {
                last += random.nextDouble() * (next - last);
                asLive.tick(last);
            }
            asLive.accept(arrival);
            last = next;
        }
        asLive.finish(99);
        Played replayed = session();
        arrivals.forEach(replayed::accept);
        replayed.finish(99);
        assertThat(replayed.rows()).isEqualTo(asLive.rows()).hasSizeGreaterThan(500);
    }

    private static Played session() {
        return new Played(
                port(BRAKE, WireFacts.Lines.SEPARATED, 0, "rpm", "torque [Nm]"),
                port(GAUGE, WireFacts.Lines.PAIRS, 0.15),
                port("/dev/ttyS0", WireFacts.Lines.SEPARATED, 0.05));
    }

    private static List<Arrival> arrivals(long seed) {
        Random random = new Random(seed);
        List<Arrival> result = new ArrayList<>();
        List<String> sources = List.of(BRAKE, GAUGE, "/dev/ttyS0");
        double[] next = {0.01, 0.012, 0.014};
        double[] step = {0.01, 0.04, random.nextBoolean() ? 0.5 : 0.02};
        for (int source = 0; source < 3; source++) {
            result.add(new Arrival.Connected(sources.get(source), Played.at(0.001 * source)));
        }
        double now = 0.01;
        int line = 0;
        while (now < 12) {
            int source = next[0] <= next[1] && next[0] <= next[2] ? 0 : next[1] <= next[2] ? 1 : 2;
            now = Math.max(now + 1e-9, next[source]);
            String text = switch (source) {
                case 0 -> (3000 + line) + "," + (180 + random.nextInt(3)) + "\n";
                case 1 -> "lambda=0." + (80 + random.nextInt(20)) + " knock_events=" + random.nextInt(2) + "\n";
                default ->
                    (line < 10 ? "oil temp [C],advance [deg]\n" : "") + (90 + random.nextInt(5)) + "," + line / 50
                            + "\n";
            };
            line++;
            result.add(Chunk.of(sources.get(source), Played.at(now), text));
            boolean gap = random.nextInt(300) == 0;
            next[source] += step[source] * (0.2 + 1.6 * random.nextDouble()) + (gap ? 1.5 : 0);
        }
        return result;
    }

    @Test
    void aFileOfAFolderIsFollowedFromItsHeaderOn() {
        Played played = new Played(WireSource.folder("logs"));
        played.connected("logs", 0)
                .accept(new Arrival.FromFile("logs", Played.at(0.1), "a.csv", 0))
                .text("logs", 0.2, "rpm,torque [Nm]\n3000,180\n")
                .accept(new Arrival.FromFile("logs", Played.at(0.3), "a.csv", 25))
                .text("logs", 0.4, "3100,181\n")
                .accept(new Arrival.FileComplete(
                        "logs", Played.at(3), "a.csv", Arrival.Taken.NEW, Fingerprint.of(1, Fingerprint.digest())));
        assertThat(played.files()).hasSize(1);
        assertThat(played.early().stream().mapToInt(samples -> samples.rows()).sum())
                .isEqualTo(2);
        assertThat(played.rows()).isEmpty();
    }

    @Test
    void aClockThatIsSetIsSaid() {
        Played played = new Played(port(BRAKE, WireFacts.Lines.SEPARATED, 0));
        played.connected(BRAKE, 0)
                .accept(Chunk.of(BRAKE, new ArrivalTime(1_000_000_000, 1_700_000_001_000L - 3_600_000), "x\n"));
        assertThat(played.said())
                .filteredOn(finding -> finding.code() == FindingCode.CLOCK_WAS_SET)
                .singleElement()
                .satisfies(finding -> assertThat(finding.number("seconds")).hasValue(-3600));
    }

    private static double lambda(double when) {
        return 0.88 + 0.05 * Math.sin(when);
    }

    private static WireSource port(String name, WireFacts.Lines kind, double delayS, String... columns) {
        return WireSource.port(name, new WireSource.LineSettings(kind, List.of(columns), delayS, 0), "115200 8N1");
    }
}
