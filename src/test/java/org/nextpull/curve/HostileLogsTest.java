package org.nextpull.curve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.channel.Block;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.PullFacts;
import org.nextpull.pull.BenchLog;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.FoundPulls;
import org.nextpull.pull.PullFinder;
import org.nextpull.pull.PullRules;
import org.nextpull.pull.Rules;
import org.nextpull.unit.SpeedBand;

/** Logs that no bench would write: nothing may throw, whatever comes out is finite, and nothing is called a pull that is none. */
class HostileLogsTest {
    private static final SpeedBand BAND = new SpeedBand(3000, 6500);
    private static final PullRules RULES = Rules.over(BAND);

    private static FoundPulls digest(BenchLog log) {
        for (PullFacts.Kind kind : PullFacts.Kind.values()) {
            read(log.found(Rules.with(RULES, kind)));
            read(log.found(Rules.with(Rules.usual(), kind)));
        }
        return log.found(RULES);
    }

    private static void read(FoundPulls found) {
        DynoFacts dyno = new DynoFacts(
                DynoFacts.Kind.ENGINE_BRAKE,
                DynoFacts.Shaft.CRANK,
                new DynoFacts.Inertia(OptionalDouble.of(0.3), OptionalDouble.of(20), DynoFacts.InertiaInLog.NO),
                new DynoFacts.Gearing(OptionalDouble.of(0.3), OptionalDouble.of(4)));
        for (Candidate candidate : found.candidates()) {
            new CurveReader(dyno).read(candidate).value().ifPresent(curve -> {
                assertThat(curve.points()).isNotEmpty();
                assertThat(Double.isFinite(curve.peakPower().power().watts())).isTrue();
                assertThat(Double.isFinite(curve.peakTorque().torque().newtonMetres()))
                        .isTrue();
                curve.rowsEvery(250);
                curve.bandMean(BAND)
                        .ifPresent(mean ->
                                assertThat(mean.torqueError().newtonMetres()).isNotNegative());
            });
        }
    }

    @Test
    void anEmptyBlockAndNoBlockGiveNothing() {
        PullFinder finder = new PullFinder("empty.csv", RULES);
        assertThat(finder.finish()).isEmpty();
        assertThat(finder.accept(
                        new Block(Samples.builder(List.of(BenchLog.TIME)).build())))
                .isEmpty();
        assertThat(finder.findings()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("rowCounts")
    void oneTwoOrAFewRowsGiveNoPull(int rows) {
        BenchLog log = new BenchLog(50, 1).move(rows / 50.0, t -> 3000 + 300 * t, 1);
        assertThat(log.rows()).isEqualTo(rows);
        assertThat(digest(log).usable()).isEmpty();
    }

    static IntStream rowCounts() {
        return IntStream.of(1, 2, 3, 5, 8, 20);
    }

    @Test
    void aConstantSpeedIsNoSweep() {
        FoundPulls found = digest(new BenchLog(50, 2).hold(4000, 30));
        assertThat(found.candidates()).noneMatch(candidate -> candidate.kind().isSweep());
    }

    @Test
    void standstillAndAllZeroTorqueAreHarmless() {
        digest(new BenchLog(50, 3).move(20, t -> 0, 1));
        BenchLog zero = new BenchLog(50, 4)
                .idle(3)
                .move(15, t -> 2500 + 300 * t, 1, rpm -> 0)
                .idle(3);
        assertThat(digest(zero).usable()).hasSize(1);
        assertThat(zero.without(BenchLog.THROTTLE).found(RULES).usable()).isEmpty();
        BenchLog negative = new BenchLog(50, 5).move(15, t -> -3000 + 400 * t, 1, rpm -> -50);
        digest(negative);
    }

    @Test
    void timeThatRunsBackwardsGivesNoPull() {
        BenchLog log = new BenchLog(50, 6).pull(2500, 7000, 300);
        for (int row = 0; row < log.rows(); row++) {
            log.set(row, BenchLog.TIME, 1000 - row / 50.0);
        }
        assertThat(digest(log).usable()).isEmpty();
        for (int row = 0; row < log.rows(); row++) {
            log.set(row, BenchLog.TIME, 5);
        }
        assertThat(digest(log).usable()).isEmpty();
    }

    @Test
    void hugeNumbersAreHarmless() {
        BenchLog log = new BenchLog(50, 7).pull(2500, 7000, 300);
        log.set(300, BenchLog.SPEED, 1e300).set(301, BenchLog.TORQUE, -1e300).set(302, BenchLog.TIME, 1e300);
        digest(log);
    }

    @Test
    void withoutTimeOrSpeedItSaysSo() {
        BenchLog timeless = new BenchLog(50, 8).pull(2500, 7000, 300).without(BenchLog.TIME);
        assertThat(timeless.found(RULES).findings()).hasSize(1).allMatch(finding -> finding.isError());
        BenchLog speedless = new BenchLog(50, 9).pull(2500, 7000, 300).without(BenchLog.SPEED);
        assertThat(speedless.found(RULES).findings()).hasSize(1).allMatch(finding -> finding.isError());
    }

    /** Random walks with holes, spikes, restarts and absent cells. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noiseNeverThrows(long seed) {
        Random random = new Random(seed);
        double hz = List.of(1.0, 7.0, 50.0, 300.0).get(random.nextInt(4));
        BenchLog log = new BenchLog(hz, seed).noise(random.nextInt(200), random.nextInt(60));
        for (int move = 0; move < 12; move++) {
            double from = random.nextInt(9000);
            double to = random.nextInt(9000);
            double seconds = 0.1 + 12 * random.nextDouble();
            double throttle = random.nextBoolean() ? 1 : random.nextDouble();
            log.advance(random.nextInt(40)).move(seconds, t -> from + (to - from) * t / seconds, throttle);
            if (random.nextInt(4) == 0) {
                log.restartClock();
            }
            if (random.nextInt(4) == 0) {
                log.skip(20 * random.nextDouble());
            }
        }
        log.with(BenchLog.LAMBDA, cells -> 0.7 + 0.5 * random.nextDouble());
        log.with(Channel.of(Role.POWER), cells -> 1e5 * random.nextGaussian());
        log.with(Channel.of(Role.ROLLER_SPEED), cells -> 1500 * random.nextDouble());
        for (int row = 0; row < log.rows(); row += 1 + random.nextInt(20)) {
            log.set(row, BenchLog.SPEED, 20000 * random.nextGaussian());
        }
        log.thinned(Map.of(BenchLog.TORQUE, 1 + random.nextInt(3), BenchLog.THROTTLE, 1 + random.nextInt(5)));
        digest(log);
        digest(log.without(BenchLog.THROTTLE));
        digest(log.without(BenchLog.TORQUE));
        digest(log.without(Channel.of(Role.POWER)));
        digest(log.without(BenchLog.SPEED));
    }

    static IntStream seeds() {
        return IntStream.range(0, 10);
    }
}
