package org.nextpull.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Block;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.PullFacts;
import org.nextpull.unit.SpeedBand;

class PullFinderTest {
    private static final SpeedBand BAND = new SpeedBand(3000, 6500);
    private static final PullRules RULES = Rules.over(BAND);
    private static final Channel ROLLER = Channel.of(Role.ROLLER_SPEED);
    private static final Channel KNOCK = Channel.of(Role.KNOCK_EVENTS);

    private static List<Refusal.Reason> reasons(FoundPulls found) {
        return found.candidates().stream()
                .flatMap(candidate -> candidate.refusal().stream())
                .map(Refusal::reason)
                .toList();
    }

    private static BenchLog noisy(long seed) {
        return new BenchLog(50, seed).noise(6, 2);
    }

    @Test
    void findsEachPullOfAFileAndNumbersThem() {
        FoundPulls found = noisy(1).pull(2500, 7000, 300)
                .pull(2500, 7000, 300)
                .pull(2500, 7000, 300)
                .found(RULES);
        assertThat(found.candidates()).extracting(Candidate::number).containsExactly(1, 2, 3);
        assertThat(found.usable()).hasSize(3).allSatisfy(pull -> {
            assertThat(pull.kind()).isEqualTo(Candidate.Kind.RISING);
            assertThat(pull.fromRpm()).isBetween(2480.0, 2900.0);
            assertThat(pull.toRpm()).isCloseTo(7000, within(40.0));
            assertThat(pull.lastLine()).isGreaterThan(pull.firstLine());
            assertThat(pull.durationS()).isBetween(13.5, 15.1);
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 7, 333, 4096})
    void theCutIntoBlocksDoesNotMatter(int size) {
        BenchLog log = noisy(2).pull(2500, 7000, 300)
                .idle(2)
                .sweep(2500, 4000, 300)
                .idle(2)
                .advance(20)
                .pull(2500, 7000, 250)
                .restartClock()
                .pull(2500, 7000, 350);
        log.with(BenchLog.LAMBDA, cells -> 0.87);
        FoundPulls whole = log.found(RULES);
        FoundPulls cut = log.found(RULES, size);
        assertThat(cut.candidates()).hasSameSizeAs(whole.candidates()).hasSize(4);
        for (int index = 0; index < whole.candidates().size(); index++) {
            Candidate one = whole.candidates().get(index);
            Candidate other = cut.candidates().get(index);
            assertThat(other.lines()).isEqualTo(one.lines());
            assertThat(other.fromRpm()).isEqualTo(one.fromRpm());
            assertThat(other.toRpm()).isEqualTo(one.toRpm());
            assertThat(other.refusal()).isEqualTo(one.refusal());
            assertThat(other.lambda()).isEqualTo(one.lambda());
            assertThat(other.findings()).isEqualTo(one.findings());
            for (Channel channel : one.samples().channels()) {
                assertThat(other.samples().presentValues(channel))
                        .isEqualTo(one.samples().presentValues(channel));
            }
        }
    }

    @Test
    void aFallingSweepIsAPullOfItsOwn() {
        FoundPulls found = noisy(3).idle(3).sweep(7000, 2500, 300).idle(3).found(RULES);
        assertThat(found.usable()).singleElement().satisfies(pull -> {
            assertThat(pull.kind()).isEqualTo(Candidate.Kind.FALLING);
            assertThat(pull.fromRpm()).isGreaterThan(pull.toRpm());
        });
    }

    @Test
    void theQuickWayBackOfTheBrakeIsNoPull() {
        FoundPulls found = noisy(4).idle(3)
                .sweep(2500, 7000, 300)
                .sweep(7000, 2500, 2500)
                .sweep(2500, 7000, 300)
                .idle(3)
                .found(RULES);
        assertThat(found.usable()).hasSize(2).allMatch(pull -> pull.kind() == Candidate.Kind.RISING);
        assertThat(found.candidates()).hasSize(2);
    }

    @Test
    void upAndDownAtOneRateAreTwoPulls() {
        FoundPulls found = noisy(5).idle(3)
                .sweep(2500, 7000, 300)
                .sweep(7000, 2500, 300)
                .idle(3)
                .found(RULES);
        assertThat(found.usable())
                .extracting(Candidate::kind)
                .containsExactly(Candidate.Kind.RISING, Candidate.Kind.FALLING);
    }

    @Test
    void holdsBeforeAndAfterASweepAreCutOff() {
        FoundPulls found = noisy(6).idle(3)
                .hold(2600, 5)
                .sweep(2600, 6900, 300)
                .hold(6900, 4)
                .idle(3)
                .found(RULES);
        assertThat(found.usable()).singleElement().satisfies(pull -> {
            assertThat(pull.kind()).isEqualTo(Candidate.Kind.RISING);
            assertThat(pull.durationS()).isBetween(13.0, 15.0);
        });
    }

    @Test
    void findsStepsUpAndDown() {
        BenchLog log = noisy(7).idle(3);
        for (int rpm = 3000; rpm <= 6500; rpm += 500) {
            int end = rpm;
            log.move(0.8, t -> end - 500 * (1 - t / 0.8), 1).hold(rpm, 5);
        }
        log.idle(3);
        for (int rpm = 6500; rpm >= 3000; rpm -= 500) {
            int end = rpm;
            log.move(0.8, t -> end + 500 * (1 - t / 0.8), 1).hold(rpm, 5);
        }
        FoundPulls found = log.idle(3).found(RULES);
        assertThat(found.usable())
                .extracting(Candidate::kind)
                .containsExactly(Candidate.Kind.STEPS_UP, Candidate.Kind.STEPS_DOWN);
        assertThat(found.usable()).allSatisfy(pull -> {
            assertThat(pull.plateaus()).hasSize(8);
            assertThat(Math.min(pull.fromRpm(), pull.toRpm())).isCloseTo(3000, within(10.0));
            assertThat(Math.max(pull.fromRpm(), pull.toRpm())).isCloseTo(6500, within(10.0));
        });
        assertThat(found.candidates()).hasSize(2);
    }

    @Test
    void aStepThatIsTooShortRefusesTheSteppedPull() {
        BenchLog log = noisy(8).idle(3);
        for (int rpm = 3000; rpm <= 6500; rpm += 500) {
            int end = rpm;
            log.move(0.8, t -> end - 500 * (1 - t / 0.8), 1).hold(rpm, rpm == 4500 ? 2 : 5);
        }
        assertThat(reasons(log.idle(3).found(RULES))).containsExactly(Refusal.Reason.HOLD_TOO_SHORT);
    }

    @Test
    void eachSparkOfAHoldIsACandidate() {
        BenchLog log = noisy(9).advance(18).idle(3).move(1, t -> 1500 + 2500 * t, 1);
        for (int deg = 18; deg <= 30; deg += 3) {
            log.advance(deg).hold(4000, 6);
        }
        FoundPulls found = log.idle(3).found(RULES);
        assertThat(found.usable()).hasSize(5).allMatch(pull -> pull.kind() == Candidate.Kind.HOLD);
        assertThat(found.usable())
                .extracting(pull -> pull.samples().presentValues(BenchLog.ADVANCE)[0])
                .containsExactly(18.0, 21.0, 24.0, 27.0, 30.0);
        assertThat(found.usable()).allSatisfy(pull -> {
            assertThat(pull.fromRpm()).isCloseTo(4000, within(5.0));
            assertThat(pull.samples().presentValues(BenchLog.ADVANCE))
                    .containsOnly(pull.samples().presentValues(BenchLog.ADVANCE)[0]);
        });
    }

    @Test
    void aSparkHeldTooBrieflyIsRefused() {
        FoundPulls found = noisy(10)
                .advance(20)
                .idle(3)
                .hold(4000, 6)
                .advance(23)
                .hold(4000, 1.5)
                .advance(26)
                .hold(4000, 6)
                .idle(3)
                .found(RULES);
        assertThat(found.candidates()).hasSize(3);
        assertThat(found.candidates().get(1).refusal().map(Refusal::reason)).contains(Refusal.Reason.HOLD_TOO_SHORT);
    }

    @Test
    void aLiftedThrottleIsNamed() {
        FoundPulls found = noisy(11).pull(2500, 5200, 300).pull(2500, 7000, 300).found(RULES);
        assertThat(found.candidates()).hasSize(2);
        Finding finding = found.candidates().get(0).refusal().orElseThrow().finding();
        assertThat(finding.code()).isEqualTo(FindingCode.PULL_THROTTLE_LIFTED);
        assertThat(finding.number("rpm").orElseThrow()).isCloseTo(5200, within(30.0));
        assertThat(finding.number("want")).hasValue(6500);
        assertThat(found.candidates().get(1).refusal()).isEmpty();
    }

    @Test
    void aPullThatTheLogOrTheSpeedCutsShortIsNamed() {
        assertThat(reasons(noisy(12).idle(3).sweep(2500, 5000, 300).found(RULES)))
                .containsExactly(Refusal.Reason.CUT_SHORT);
        assertThat(reasons(noisy(13)
                        .idle(3)
                        .sweep(2500, 5000, 300)
                        .sweep(5000, 3800, 900)
                        .idle(3)
                        .found(RULES)))
                .containsExactly(Refusal.Reason.CUT_SHORT);
    }

    @Test
    void aPullThatStartsAboveTheBandIsNamed() {
        FoundPulls found = noisy(14).pull(3600, 7000, 300).found(RULES);
        assertThat(reasons(found)).containsExactly(Refusal.Reason.OUTSIDE_BAND);
    }

    @Test
    void aGapInTheMiddleRefusesAndBesideThePullDoesNot() {
        assertThat(reasons(noisy(15)
                        .pull(2500, 7000, 300)
                        .drop(row -> row >= 350 && row < 470)
                        .found(RULES)))
                .containsExactly(Refusal.Reason.DATA_GAP);
        assertThat(noisy(16)
                        .pull(2500, 7000, 300)
                        .drop(row -> row >= 20 && row < 140)
                        .found(RULES)
                        .usable())
                .hasSize(1);
    }

    @Test
    void droppedRowsAreSaidAndManyRefuse() {
        FoundPulls some =
                noisy(17).pull(2500, 7000, 300).drop(row -> row % 12 == 0).found(RULES);
        assertThat(some.usable())
                .singleElement()
                .satisfies(pull ->
                        assertThat(pull.findings()).extracting(Finding::code).contains(FindingCode.PULL_ROWS_MISSING));
        FoundPulls many = noisy(18)
                .pull(2500, 7000, 300)
                .drop(row -> row % 5 == 0 || row % 7 == 0)
                .found(RULES);
        assertThat(reasons(many)).containsExactly(Refusal.Reason.ROWS_DROPPED);
    }

    @Test
    void aSpikeIsLeftOutAndALeapRefuses() {
        FoundPulls spiked =
                noisy(19).pull(2500, 7000, 300).set(400, BenchLog.SPEED, 9000).found(RULES);
        assertThat(spiked.usable()).singleElement().satisfies(pull -> {
            assertThat(pull.findings()).extracting(Finding::code).contains(FindingCode.PULL_SPEED_SPIKES);
            assertThat(Arrays.stream(pull.samples().presentValues(BenchLog.SPEED))
                            .max()
                            .orElseThrow())
                    .isLessThan(7100);
        });
        FoundPulls leapt = noisy(20)
                .idle(3)
                .sweep(2500, 4500, 300)
                .sweep(5000, 7000, 300)
                .idle(3)
                .found(RULES);
        assertThat(reasons(leapt)).containsExactly(Refusal.Reason.SPEED_JUMP);
    }

    @Test
    void aWaveringSpeedRefuses() {
        FoundPulls found = noisy(21)
                .idle(3)
                .sweep(2500, 4500, 300)
                .sweep(4500, 4380, 200)
                .sweep(4380, 7000, 300)
                .idle(3)
                .found(RULES);
        assertThat(reasons(found)).containsExactly(Refusal.Reason.SPEED_NOT_MONOTONE);
    }

    @Test
    void aSlippingTyreRefuses() {
        BenchLog log = noisy(22).pull(2500, 7000, 300);
        log.with(ROLLER, cells -> {
            double rpm = Objects.requireNonNull(cells.get(BenchLog.SPEED));
            return rpm > 5000 && rpm < 5600 ? rpm / 4.4 : rpm / 4.2;
        });
        FoundPulls found = log.found(RULES);
        assertThat(reasons(found)).containsExactly(Refusal.Reason.WHEEL_SLIP);
        BenchLog firm = noisy(22).pull(2500, 7000, 300);
        firm.with(ROLLER, cells -> Objects.requireNonNull(cells.get(BenchLog.SPEED)) / 4.2);
        assertThat(firm.found(RULES).usable()).hasSize(1);
    }

    @Test
    void theFirstGoodPullsAreThrownAwayWhenAsked() {
        FoundPulls found = noisy(23)
                .pull(2500, 5000, 300)
                .pull(2500, 7000, 300)
                .pull(2500, 7000, 300)
                .found(RULES.withThrowAwayFirst(1));
        assertThat(reasons(found)).containsExactly(Refusal.Reason.THROTTLE_LIFTED, Refusal.Reason.THROWN_AWAY_FIRST);
        assertThat(found.thrownAway()).isEqualTo(1);
        assertThat(found.usable()).extracting(Candidate::number).containsExactly(3);
    }

    @Test
    void aRestartedClockAndARunNumberEachBeginAnotherPull() {
        BenchLog clocks = noisy(24).sweep(2500, 7000, 300).restartClock().sweep(2500, 7000, 300);
        assertThat(clocks.found(RULES).usable()).hasSize(2);
        BenchLog runs = noisy(25).sweep(2500, 7000, 300).sweep(2500, 7000, 300);
        int half = runs.rows() / 2;
        runs.with(Channel.of(Role.RUN), cells -> 1);
        for (int row = half; row < runs.rows(); row++) {
            runs.set(row, Channel.of(Role.RUN), 2);
        }
        assertThat(runs.found(RULES).usable()).hasSize(2);
    }

    @Test
    void oneRowWithAWrongTimeIsLeftOut() {
        BenchLog log = noisy(26).pull(2500, 7000, 300);
        log.set(300, BenchLog.TIME, 0).set(500, BenchLog.TIME, 4e9);
        FoundPulls found = log.found(RULES);
        assertThat(found.usable()).hasSize(1);
        assertThat(found.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.ROWS_OUT_OF_TIME);
            assertThat(finding.number("count")).hasValue(2);
        });
    }

    @Test
    void withoutAThrottleTheTorqueTells() throws IOException {
        BenchLog log = noisy(27)
                .idle(3)
                .move(20, t -> 2500 + 150 * t, 0.95, rpm -> 60)
                .idle(3)
                .pull(2500, 7000, 300)
                .pull(2500, 7000, 300)
                .without(BenchLog.THROTTLE);
        FoundPulls live = log.found(RULES);
        assertThat(live.usable()).hasSizeGreaterThanOrEqualTo(2);
        FoundPulls surveyed = FoundPulls.find(log, RULES);
        assertThat(surveyed.usable()).hasSize(2);
        assertThat(surveyed.findings()).extracting(Finding::code).contains(FindingCode.LOAD_WITHOUT_THROTTLE);
    }

    @Test
    void aPartLoadRunIsToldFromThePullsByTheSurvey() throws IOException {
        BenchLog log = noisy(28)
                .idle(3)
                .move(20, t -> 2500 + 225 * t, 0.95, rpm -> 110)
                .idle(3)
                .pull(2500, 7000, 300)
                .without(BenchLog.THROTTLE);
        FoundPulls surveyed = FoundPulls.find(log, RULES);
        assertThat(reasons(surveyed)).containsExactly(Refusal.Reason.LOAD_TOO_LOW);
        assertThat(surveyed.usable()).hasSize(1);
    }

    @Test
    void onAnInertiaRollerTheSpeedAloneTells() {
        BenchLog log = noisy(29)
                .move(4, t -> 2000, 0.1)
                .move(12, t -> 2000 + 5200 * (1 - Math.exp(-t / 8)) / (1 - Math.exp(-1.5)), 1)
                .move(10, t -> 7200 - 400 * t, 0)
                .without(BenchLog.THROTTLE)
                .without(BenchLog.TORQUE);
        log.with(ROLLER, cells -> Objects.requireNonNull(cells.get(BenchLog.SPEED)) / 4.2);
        log.without(BenchLog.SPEED);
        DynoFacts.Gearing gearing = new DynoFacts.Gearing(OptionalDouble.empty(), OptionalDouble.of(4.2));
        FoundPulls found = log.found(Rules.with(RULES, gearing));
        assertThat(found.usable()).singleElement().satisfies(pull -> {
            assertThat(pull.speed().axis()).isEqualTo(SpeedSource.Axis.ENGINE_FROM_ROLLER);
            assertThat(pull.toRpm()).isBetween(6700.0, 7300.0);
        });
        assertThat(found.findings()).extracting(Finding::code).contains(FindingCode.SPEED_FROM_ROLLER);
    }

    @Test
    void theEntryTransientIsTrimmed() {
        FoundPulls found = new BenchLog(50, 30)
                .noise(6, 1)
                .idle(3)
                .move(
                        15,
                        t -> 2200 + 320 * t,
                        1,
                        rpm -> BenchLog.torque(rpm) * (1 - 0.5 * Math.exp(-(rpm - 2200) / 320 / 0.25)))
                .idle(3)
                .found(RULES);
        assertThat(found.usable()).singleElement().satisfies(pull -> {
            double firstRpm = pull.samples().presentValues(BenchLog.SPEED)[0];
            double firstNm = pull.samples().presentValues(BenchLog.TORQUE)[0];
            assertThat(firstRpm).isBetween(2400.0, 2900.0);
            assertThat(firstNm / BenchLog.torque(firstRpm)).isCloseTo(1, within(0.04));
        });
    }

    @Test
    void aThrottleThatNeverOpensFullyIsSaid() {
        BenchLog log = noisy(31).idle(3).move(10, t -> 2500 + 400 * t, 0.93).idle(3);
        FoundPulls found = log.found(RULES);
        assertThat(found.candidates()).isEmpty();
        assertThat(found.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.THROTTLE_NEVER_FULL);
            assertThat(finding.number("percent").orElseThrow()).isCloseTo(93, within(1e-9));
        });
        assertThat(log.found(Rules.withFullLoad(RULES, 0.9)).usable()).hasSize(1);
    }

    @Test
    void aFlickeringThrottleRowDoesNotCutAPull() {
        BenchLog log = noisy(32).pull(2500, 7000, 300);
        log.set(400, BenchLog.THROTTLE, 0.2);
        assertThat(log.found(RULES).usable()).hasSize(1);
    }

    @Test
    void theWantedKindIsHeeded() {
        BenchLog log = noisy(33).idle(3).hold(2600, 5).sweep(2600, 6900, 300).idle(3);
        assertThat(log.found(Rules.with(RULES, PullFacts.Kind.STEPS)).candidates())
                .isEmpty();
        assertThat(log.found(Rules.with(RULES, PullFacts.Kind.HOLD)).candidates())
                .singleElement()
                .satisfies(pull -> assertThat(pull.kind()).isEqualTo(Candidate.Kind.HOLD));
        assertThat(log.found(Rules.with(RULES, PullFacts.Kind.ACCELERATION)).usable())
                .hasSize(1);
    }

    @Test
    void cellsMayBeAbsentBecauseSensorsAreLoggedAtOtherRates() {
        BenchLog log = noisy(34).pull(2500, 7000, 300);
        Map<Channel, Integer> every = Map.of(BenchLog.THROTTLE, 5, BenchLog.TORQUE, 2);
        assertThat(log.thinned(every).found(RULES).usable()).hasSize(1);
    }

    @Test
    void oneFileOrOneFileAPullGiveTheSamePulls() {
        BenchLog together = noisy(40).pull(2500, 7000, 300);
        int half = together.rows();
        together.restartClock().pull(2500, 7000, 250);
        BenchLog first = noisy(40).pull(2500, 7000, 300);
        List<Candidate> both = together.found(RULES).usable();
        Candidate alone = first.found(RULES).usable().get(0);
        assertThat(first.rows()).isEqualTo(half);
        assertThat(both).hasSize(2);
        assertThat(both.get(0).lines()).isEqualTo(alone.lines());
        assertThat(both.get(0).samples().presentValues(BenchLog.TORQUE))
                .isEqualTo(alone.samples().presentValues(BenchLog.TORQUE));
    }

    /** With a number of the run each row is looked at by itself, without one those that only go on are taken together. */
    @Test
    void rowsTakenTogetherGiveWhatEachByItselfGives() {
        for (int seed = 0; seed < 12; seed++) {
            FoundPulls together = troubled(seed).found(RULES, 700);
            FoundPulls single =
                    troubled(seed).with(Channel.of(Role.RUN), cells -> 1).found(RULES, 700);
            assertThat(together.candidates()).hasSizeGreaterThan(2);
            assertThat(told(together)).isEqualTo(told(single));
            assertThat(together.findings()).isEqualTo(single.findings());
        }
    }

    /** Knock between and in the pulls makes some stretches wait for those before them; others are numbered up to three later. */
    @Test
    void stretchesJudgedAsideGiveWhatThoseJudgedAtOnceGive() throws IOException {
        for (int seed = 0; seed < 12; seed++) {
            BenchLog log = troubled(seed);
            for (int pull = 0; pull < 4; pull++) {
                log.idle(6).pull(2500, 7000, 500 + 20 * pull);
            }
            int partLoad = log.idle(6).rows();
            log.move(3, time -> 3000, 0.6).idle(6).pull(2500, 7000, 600);
            log.set(partLoad + 30, KNOCK, 2);
            FoundPulls aside = FoundPulls.find(log, RULES);
            FoundPulls atOnce = log.found(RULES, 1000);
            assertThat(aside.candidates()).hasSizeGreaterThan(5);
            assertThat(told(aside)).isEqualTo(told(atOnce)).anyMatch(each -> each.contains("KNOCK_ALONE"));
            assertThat(aside.findings()).isEqualTo(atOnce.findings());
            assertThat(aside.thrownAway()).isEqualTo(atOnce.thrownAway());
        }
    }

    /** Pulls with everything in them and beside them that ends a run of like rows. */
    private static BenchLog troubled(int seed) {
        Random random = new Random(seed);
        BenchLog log = noisy(100 + seed)
                .pull(2500, 7000, 300)
                .skip(0.9 + 0.3 * random.nextInt(2))
                .sweep(2500, 6500, 400)
                .idle(1 + random.nextInt(3))
                .pull(2500, 7000, 500)
                .skip(random.nextInt(15))
                .pull(3000, 7000, 400);
        log.with(KNOCK, cells -> 0);
        log.with(BenchLog.LAMBDA, cells -> 1 - 0.1 * random.nextDouble());
        for (int fault = 0; fault < 40; fault++) {
            int row = 1 + random.nextInt(log.rows() - 2);
            switch (random.nextInt(6)) {
                case 0 -> log.set(row, KNOCK, 1 + random.nextInt(2));
                case 1 -> {
                    double throttle = 0.9 + 0.1 * random.nextDouble();
                    for (int near = row; near < Math.min(row + 4, log.rows()); near++) {
                        log.set(near, BenchLog.THROTTLE, throttle);
                    }
                }
                case 2 -> log.blank(row, BenchLog.THROTTLE);
                case 3 -> log.set(row, BenchLog.TIME, random.nextBoolean() ? 0 : 4e9);
                case 4 -> log.blank(row, BenchLog.TIME);
                default -> log.blank(row, KNOCK);
            }
        }
        return log;
    }

    private static List<String> told(FoundPulls found) {
        return found.candidates().stream()
                .map(candidate -> candidate.number() + " " + candidate.kind() + " " + candidate.lines() + " "
                        + candidate.refusal() + " " + candidate.findings() + " " + candidate.lambda() + " "
                        + rows(candidate.samples()) + " " + rows(candidate.knock()))
                .toList();
    }

    private static String rows(Samples samples) {
        return Stream.of(BenchLog.TIME, BenchLog.SPEED, BenchLog.TORQUE, BenchLog.LAMBDA, KNOCK)
                .map(channel ->
                        Arrays.toString(samples.presentRows(channel)) + Arrays.toString(samples.presentValues(channel)))
                .toList()
                .toString();
    }

    @Test
    void aPullIsGivenOnceItsLambdaIsThere() {
        BenchLog log = new BenchLog(100, 50).pull(2500, 7000, 300).idle(40).with(BenchLog.LAMBDA, cells -> 0.9);
        PullFinder finder = new PullFinder("long.csv", RULES);
        int found = 0;
        for (Block block : log.blocks(200)) {
            found += finder.accept(block).size();
        }
        assertThat(found).isOne();
        assertThat(finder.heldRows()).isLessThan(1000);
    }

    /** Two hours of idling at 100 Hz between two pulls; only the blocks of the last seconds may be held. */
    @Test
    void aLongLogIsNotKept() {
        PullFinder finder = new PullFinder("long.csv", RULES);
        int found = 0;
        double time = 0;
        for (int part = 0; part < 180; part++) {
            BenchLog log = new BenchLog(100, part).skip(time);
            boolean pull = part == 10 || part == 170;
            log = pull ? log.pull(2500, 7000, 300) : log.idle(40);
            time = log.time();
            for (Block block : log.blocks(1000)) {
                found += finder.accept(block).size();
                assertThat(finder.heldRows()).isLessThan(pull ? 5000 : 1000);
            }
        }
        assertThat(found + finder.finish().size()).isEqualTo(2);
    }
}
