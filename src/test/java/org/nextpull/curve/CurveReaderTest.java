package org.nextpull.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.DynoFacts;
import org.nextpull.pull.BenchLog;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.PullRules;
import org.nextpull.pull.Rules;
import org.nextpull.unit.SpeedBand;

class CurveReaderTest {
    private static final SpeedBand BAND = new SpeedBand(3000, 6500);
    private static final PullRules RULES = Rules.over(BAND);
    private static final Channel POWER = Channel.of(Role.POWER);
    private static final Channel ROLLER = Channel.of(Role.ROLLER_SPEED);
    private static final double RATIO = 4.2;
    private static final double RAD_S_PER_RPM = Math.PI / 30;

    /** Mean of the model's torque over the grid of the band: the truth. */
    private static double trueMean() {
        double sum = 0;
        int count = 0;
        for (double rpm = 3000; rpm <= 6500; rpm += 25) {
            sum += BenchLog.torque(rpm);
            count++;
        }
        return sum / count;
    }

    private static double cell(Map<Channel, Double> cells, Channel channel) {
        return Objects.requireNonNull(cells.get(channel));
    }

    private static DynoFacts dyno(
            DynoFacts.Shaft at, OptionalDouble engineSide, OptionalDouble roller, DynoFacts.InertiaInLog inLog) {
        return new DynoFacts(
                DynoFacts.Kind.ENGINE_BRAKE,
                at,
                new DynoFacts.Inertia(engineSide, roller, inLog),
                new DynoFacts.Gearing(OptionalDouble.empty(), OptionalDouble.of(RATIO)));
    }

    private static RawCurve curve(BenchLog log, DynoFacts dyno) {
        return outcome(log, dyno).value().orElseThrow();
    }

    private static Outcome<RawCurve> outcome(BenchLog log, DynoFacts dyno) {
        return outcome(log, dyno, RULES);
    }

    private static Outcome<RawCurve> outcome(BenchLog log, DynoFacts dyno, PullRules rules) {
        List<Candidate> pulls = log.found(rules).usable();
        assertThat(pulls).hasSize(1);
        return new CurveReader(dyno).read(pulls.get(0));
    }

    private static RawCurve.BandMean mean(RawCurve curve) {
        return curve.bandMean(BAND).orElseThrow();
    }

    @Test
    void followsTheTruthAndCoversTheBand() {
        RawCurve curve = curve(new BenchLog(50, 1).pull(2500, 7000, 300), DynoFacts.defaults());
        assertThat(curve.grid()).isEqualTo(SpeedGrid.STANDARD);
        assertThat(curve.points())
                .allSatisfy(point -> assertThat(point.torque().newtonMetres())
                        .isCloseTo(BenchLog.torque(point.rpm()), within(0.02)));
        assertThat(mean(curve).isComplete()).isTrue();
        assertThat(mean(curve).torque().newtonMetres()).isCloseTo(trueMean(), within(0.01));
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 20, 50, 100, 400})
    void theBandMeanDoesNotDependOnTheRateOfSampling(double hz) {
        RawCurve curve = curve(new BenchLog(hz, 2).pull(2500, 7000, 300), DynoFacts.defaults());
        assertThat(mean(curve).isComplete()).isTrue();
        assertThat(mean(curve).torque().newtonMetres()).isCloseTo(trueMean(), within(0.0006 * trueMean()));
    }

    @Test
    void unevenSamplingDoesNotShiftTheBandMean() {
        BenchLog log = new BenchLog(100, 3).pull(2500, 7000, 300);
        int middle = log.rows() / 2;
        Candidate pull = log.drop(row -> row > middle && row % 3 != 0)
                .found(RULES)
                .candidates()
                .get(0);
        RawCurve curve =
                new CurveReader(DynoFacts.defaults()).read(pull).value().orElseThrow();
        assertThat(mean(curve).torque().newtonMetres()).isCloseTo(trueMean(), within(0.0003 * trueMean()));
    }

    @Test
    void risingAndFallingSweepsGiveOneCurve() {
        RawCurve falling =
                curve(new BenchLog(50, 4).idle(3).sweep(7000, 2500, 300).idle(3), DynoFacts.defaults());
        assertThat(mean(falling).torque().newtonMetres()).isCloseTo(trueMean(), within(0.01));
    }

    /** Identity P = T 2 pi n / 60; in the trade's units hp = lb-ft x rpm / 5252, so the two numbers meet at 5252 rpm (common practice). */
    @Test
    void powerIsTorqueTimesSpeedAndTheNumbersMeetAt5252() {
        RawCurve curve = curve(new BenchLog(50, 5).noise(5, 2).pull(2500, 7000, 300), DynoFacts.defaults());
        double newtonMetresPerPoundFoot = 0.3048 * 0.45359237 * 9.80665;
        double wattsPerHorsepower = 550 * newtonMetresPerPoundFoot;
        assertThat(curve.points()).allSatisfy(point -> {
            double horsepower = point.power().watts() / wattsPerHorsepower;
            double poundFeet = point.torque().newtonMetres() / newtonMetresPerPoundFoot;
            assertThat(horsepower).isCloseTo(poundFeet * point.rpm() / 5252.113, within(1e-4));
            assertThat(horsepower > poundFeet).isEqualTo(point.rpm() > 5252);
        });
    }

    @Test
    void torqueFromPowerAloneIsPowerOverSpeed() {
        BenchLog log = new BenchLog(50, 6).pull(2500, 7000, 300);
        log.with(POWER, cells -> cell(cells, BenchLog.TORQUE) * cell(cells, BenchLog.SPEED) * RAD_S_PER_RPM);
        RawCurve both = curve(log, DynoFacts.defaults());
        Outcome<RawCurve> alone = outcome(log.without(BenchLog.TORQUE), DynoFacts.defaults());
        assertThat(alone.findings()).extracting(Finding::code).contains(FindingCode.CURVE_TORQUE_FROM_POWER);
        assertThat(mean(alone.value().orElseThrow()).torque().newtonMetres())
                .isCloseTo(mean(both).torque().newtonMetres(), within(1e-6));
    }

    @Test
    void torqueAndPowerThatDisagreeAreSaidAndTorqueIsUsed() {
        BenchLog log = new BenchLog(50, 7).pull(2500, 7000, 300);
        log.with(POWER, cells -> 0.9 * cell(cells, BenchLog.TORQUE) * cell(cells, BenchLog.SPEED) * RAD_S_PER_RPM);
        Outcome<RawCurve> read = outcome(log, DynoFacts.defaults());
        assertThat(read.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.CURVE_TORQUE_AND_POWER_DISAGREE);
            assertThat(finding.number("percent").orElseThrow()).isCloseTo(90, within(0.01));
        });
        assertThat(mean(read.value().orElseThrow()).torque().newtonMetres()).isCloseTo(trueMean(), within(0.01));
    }

    /** A brake that leaves the inertia out shows T - J dw/dt; with J given the curve has T again. */
    @Test
    void inertiaLeftOutByTheLogComesBack() {
        double inertia = 0.35;
        double rate = 300 * RAD_S_PER_RPM;
        BenchLog log = new BenchLog(50, 8)
                .idle(3)
                .move(15, t -> 2500 + 300 * t, 1, rpm -> BenchLog.torque(rpm) - inertia * rate)
                .idle(3);
        DynoFacts given = dyno(
                DynoFacts.Shaft.CRANK, OptionalDouble.of(inertia), OptionalDouble.empty(), DynoFacts.InertiaInLog.NO);
        Outcome<RawCurve> read = outcome(log, given);
        assertThat(mean(read.value().orElseThrow()).torque().newtonMetres()).isCloseTo(trueMean(), within(0.01));
        assertThat(read.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.CURVE_INERTIA_ADDED);
            assertThat(finding.number("newton_metres").orElseThrow()).isCloseTo(inertia * rate, within(0.01));
        });
        DynoFacts inLog = dyno(
                DynoFacts.Shaft.CRANK, OptionalDouble.of(inertia), OptionalDouble.empty(), DynoFacts.InertiaInLog.YES);
        assertThat(mean(curve(log, inLog)).torque().newtonMetres())
                .isCloseTo(trueMean() - inertia * rate, within(0.01));
    }

    /** Round trip: the engine spins up an inertia roller freely; from the roller's speed alone the torque at the roller comes back. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1})
    void anInertiaRollerGivesItsTorqueBackFromSpeedAlone(double noiseRpm) {
        double rollerInertia = 25;
        List<Double> rpm = new ArrayList<>(List.of(2400.0));
        double hz = 50;
        int inner = 20;
        while (rpm.get(rpm.size() - 1) < 7000) {
            double now = rpm.get(rpm.size() - 1);
            for (int step = 0; step < inner; step++) {
                double atRoller = BenchLog.torque(now) * RATIO;
                now += atRoller / rollerInertia / RAD_S_PER_RPM * RATIO / hz / inner;
            }
            rpm.add(now);
        }
        BenchLog log = new BenchLog(hz, 9)
                .noise(noiseRpm, 0)
                .move(4, t -> 2400, 0.1)
                .move((rpm.size() - 1) / hz, t -> rpm.get((int) Math.round(t * hz)), 1)
                .move(10, t -> rpm.get(rpm.size() - 1) - 400 * t, 0);
        log.with(ROLLER, cells -> cell(cells, BenchLog.SPEED) / RATIO)
                .without(BenchLog.SPEED)
                .without(BenchLog.TORQUE)
                .without(BenchLog.THROTTLE);
        DynoFacts dyno = dyno(
                DynoFacts.Shaft.CRANK,
                OptionalDouble.empty(),
                OptionalDouble.of(rollerInertia),
                DynoFacts.InertiaInLog.NO);
        Outcome<RawCurve> read = outcome(log, dyno, Rules.with(RULES, dyno.gearing()));
        RawCurve curve = read.value().orElseThrow();
        assertThat(curve.axes().torqueAt()).isEqualTo(DynoFacts.Shaft.ROLLER);
        assertThat(read.findings()).extracting(Finding::code).contains(FindingCode.CURVE_TORQUE_AT_ROLLER);
        RawCurve.BandMean mean = mean(curve);
        assertThat(mean.torque().newtonMetres()).isCloseTo(trueMean() * RATIO, within(0.006 * trueMean() * RATIO));
        assertThat(mean.power().watts() / mean.torque().newtonMetres())
                .isCloseTo(4750 / RATIO * RAD_S_PER_RPM, within(3.0));
        // the slope at an end rests on one side; a torque made of it would make a peak there
        List<CurvePoint> points = curve.points();
        for (CurvePoint end : List.of(points.get(0), points.get(points.size() - 1))) {
            double truth = BenchLog.torque(end.rpm()) * RATIO;
            assertThat(end.torque().newtonMetres()).isCloseTo(truth, within(0.02 * truth));
        }
    }

    @Test
    void withoutTorquePowerOrInertiaThereIsNoCurve() {
        BenchLog log = new BenchLog(50, 10).pull(2500, 7000, 300).without(BenchLog.TORQUE);
        Outcome<RawCurve> read = outcome(log, DynoFacts.defaults());
        assertThat(read.isFailed()).isTrue();
        assertThat(read.findings()).extracting(Finding::code).containsExactly(FindingCode.CURVE_WITHOUT_TORQUE);
    }

    @Test
    void aConstantFactorOnTheTorqueScalesTheCurve() {
        RawCurve plain = curve(new BenchLog(50, 11).noise(5, 2).pull(2500, 7000, 300), DynoFacts.defaults());
        RawCurve scaled = curve(
                new BenchLog(50, 11).noise(5, 2 * 1.25).torqueFactor(1.25).pull(2500, 7000, 300), DynoFacts.defaults());
        assertThat(mean(scaled).torque().newtonMetres())
                .isCloseTo(1.25 * mean(plain).torque().newtonMetres(), within(1e-6));
        assertThat(scaled.peakTorque().rpm()).isEqualTo(plain.peakTorque().rpm());
    }

    @Test
    void peaksAreThoseOfTheSmoothedCurve() {
        RawCurve curve = curve(new BenchLog(100, 12).noise(5, 2).pull(2500, 7000, 300), DynoFacts.defaults());
        assertThat(curve.peakTorque().rpm()).isCloseTo(4600, within(250.0));
        assertThat(curve.peakTorque().torque().newtonMetres()).isCloseTo(205, within(1.0));
        double best = 0;
        double at = 0;
        for (double rpm = 3000; rpm < 7000; rpm += 1) {
            if (BenchLog.torque(rpm) * rpm > best) {
                best = BenchLog.torque(rpm) * rpm;
                at = rpm;
            }
        }
        assertThat(curve.peakPower().rpm()).isCloseTo(at, within(200.0));
        assertThat(curve.peakPower().power().watts()).isCloseTo(best * RAD_S_PER_RPM, within(800.0));
    }

    @Test
    void rowsAreReadAtRoundSpeeds() {
        RawCurve curve = curve(new BenchLog(50, 13).pull(2500, 7000, 300), DynoFacts.defaults());
        List<CurvePoint> rows = curve.rowsEvery(250);
        assertThat(rows)
                .extracting(CurvePoint::rpm)
                .contains(3000.0, 3250.0, 6500.0)
                .doesNotContain(3025.0);
        assertThat(curve.rowsEvery(30))
                .filteredOn(row -> row.rpm() == 3030)
                .singleElement()
                .satisfies(
                        row -> assertThat(row.torque().newtonMetres()).isCloseTo(BenchLog.torque(3030), within(0.05)));
    }

    @Test
    void aSteppedPullIsReadBetweenItsPlateaus() {
        BenchLog log = new BenchLog(20, 14).noise(5, 1).idle(3);
        for (int rpm = 3000; rpm <= 6500; rpm += 500) {
            int end = rpm;
            log.move(0.8, t -> end - 500 * (1 - t / 0.8), 1).hold(rpm, 6);
        }
        RawCurve curve = curve(log.idle(3), DynoFacts.defaults());
        assertThat(mean(curve).isComplete()).isTrue();
        assertThat(mean(curve).torque().newtonMetres()).isCloseTo(trueMean(), within(0.8));
        assertThat(curve.rowsEvery(500))
                .hasSize(8)
                .allSatisfy(row ->
                        assertThat(row.torque().newtonMetres()).isCloseTo(BenchLog.torque(row.rpm()), within(0.7)));
    }

    @Test
    void aHoldIsOnePointAtItsSpeed() {
        BenchLog log = new BenchLog(20, 15)
                .noise(5, 1)
                .advance(24)
                .idle(3)
                .hold(4012, 8)
                .idle(3);
        RawCurve curve = curve(log, DynoFacts.defaults());
        assertThat(curve.points()).singleElement().satisfies(point -> {
            assertThat(point.rpm()).isCloseTo(4012, within(3.0));
            assertThat(point.torque().newtonMetres()).isCloseTo(BenchLog.torque(4012), within(0.5));
        });
        assertThat(mean(curve).isComplete()).isTrue();
    }

    @Test
    void aHoleOfSomeRowsIsBridged() {
        BenchLog log = new BenchLog(50, 16).pull(2500, 7000, 300).drop(row -> row >= 500 && row < 518);
        RawCurve curve = curve(log, DynoFacts.defaults());
        assertThat(mean(curve).isComplete()).isTrue();
        assertThat(mean(curve).torque().newtonMetres()).isCloseTo(trueMean(), within(0.02));
    }

    @Test
    void singleImpossibleTorquesAreLeftOut() {
        BenchLog log = new BenchLog(50, 17).noise(5, 2).pull(2500, 7000, 300);
        double clean = mean(curve(log, DynoFacts.defaults())).torque().newtonMetres();
        log.set(400, BenchLog.TORQUE, 0).set(600, BenchLog.TORQUE, 65535).set(601, BenchLog.TORQUE, 65535);
        Outcome<RawCurve> read = outcome(log, DynoFacts.defaults());
        assertThat(read.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.CURVE_TORQUE_SPIKES);
            assertThat(finding.number("count")).hasValue(3);
        });
        assertThat(mean(read.value().orElseThrow()).torque().newtonMetres()).isCloseTo(clean, within(0.05));
    }

    /** The stated error of the band mean holds: over many pulls with correlated noise its square averages to what the means really do. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.8})
    void theErrorOfTheBandMeanIsHonest(double memory) {
        double squares = 0;
        double stated = 0;
        int pulls = 120;
        for (int seed = 0; seed < pulls; seed++) {
            double[] state = {0};
            Random random = new Random(1000 + seed);
            BenchLog log = new BenchLog(50, seed)
                    .idle(1)
                    .move(15, t -> 2500 + 300 * t, 1, rpm -> {
                        state[0] = memory * state[0] + 3 * random.nextGaussian();
                        return BenchLog.torque(rpm) + state[0];
                    })
                    .idle(1);
            RawCurve.BandMean mean = mean(curve(log, DynoFacts.defaults()));
            squares += Math.pow(mean.torque().newtonMetres() - trueMean(), 2);
            stated += Math.pow(mean.torqueError().newtonMetres(), 2);
        }
        // 120 squared deviations: the ratio has a standard deviation of sqrt(2/120) = 0.13, and the cut-off of the lags
        // takes a little
        assertThat(stated / squares).isBetween(0.6, 1.5);
    }
}
