package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.BenchLog;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.Days.Named;
import org.nextpull.unit.Advance;

/** The chain over invented logs: settings, order, struck pulls, several files, air. */
class SessionTest {
    private static final double[] FACTORS = {0.97, 1.0, 1.02};

    private static Named one() {
        BenchLog log = new BenchLog(50, 1);
        for (double factor : FACTORS) {
            Days.pull(log, factor);
        }
        return new Named("day.csv", log);
    }

    private static Named[] several() {
        Named[] logs = new Named[FACTORS.length];
        for (int index = 0; index < FACTORS.length; index++) {
            logs[index] = new Named("pull" + (index + 1) + ".csv", Days.pull(new BenchLog(50, 1), FACTORS[index]));
        }
        return logs;
    }

    private static List<AskedSetting> settings(int... orders) {
        return List.of(
                Days.asked(Optional.empty(), OptionalInt.of(1), order(orders, 0), 20),
                Days.asked(Optional.empty(), OptionalInt.of(2), order(orders, 1), 22),
                Days.asked(Optional.empty(), OptionalInt.of(3), order(orders, 2), 24));
    }

    private static OptionalInt order(int[] orders, int index) {
        return orders.length == 0 ? OptionalInt.empty() : OptionalInt.of(orders[index]);
    }

    private static List<Double> advances(SessionResult result) {
        return result.pulls().stream()
                .map(pull -> pull.setting().advance().map(Advance::deg).orElse(-1.0))
                .toList();
    }

    private static double torque(MeasuredPull pull) {
        return pull.figures().orElseThrow().meanTorque().orElseThrow().newtonMetres();
    }

    @Test
    void aPlanWithoutABandIsSaidAboutLogs() {
        SweepPlan plan = Days.plan("[timing]\nstart_deg = 20\nleast_deg = 10\nmost_deg = 46\n");
        assertThat(Session.evaluate(Days.ofLogs(plan, one())).findings())
                .anyMatch(finding -> finding.code() == FindingCode.PLAN_WITHOUT_BAND);
        assertThat(Session.evaluate(Days.ofLogs(Days.timing(), one())).findings())
                .noneMatch(finding -> finding.code() == FindingCode.PLAN_WITHOUT_BAND);
        SessionInput table = SessionInput.of(plan, List.of(), List.of(Days.table(List.of(new Days.Run(20, 200)))));
        assertThat(Session.evaluate(table).findings())
                .noneMatch(finding -> finding.code() == FindingCode.PLAN_WITHOUT_BAND);
    }

    @Test
    void aCopyOfALogIsReadAndCountsOnce() {
        SweepPlan plan = Days.timing();
        SessionInput input = SessionInput.of(plan, List.of(), List.of());
        List<SourcePulls> first = Session.read(Days.ofLogs(plan, one()));
        List<SourcePulls> copy = Session.read(Days.ofLogs(plan, new Named("copy.csv", one().log())));
        Amendments struck = new Amendments(Map.of(2, "misfire"), Set.of(), Map.of());
        JoinedDay joined = JoinedDay.of(
                plan,
                List.of(new JoinedDay.Part(input, first), new JoinedDay.Part(input.withAmendments(struck), copy)));

        SessionResult result = Session.evaluate(joined.input(), joined.sources());

        assertThat(result.pulls()).hasSize(6);
        assertThat(result.pulls().stream().filter(MeasuredPull::isUsed).map(MeasuredPull::number))
                .containsExactly(1, 3);
        assertThat(result.pulls().get(3).findings())
                .extracting(finding -> finding.code())
                .containsExactly(FindingCode.PULL_COUNTED_ALREADY);
        assertThat(result.pulls().get(4).standing()).isEqualTo(MeasuredPull.Status.STRUCK);
    }

    @Test
    void whatNobodyConfirmedOfADayStaysAssumedBesideOtherDays() {
        SweepPlan plan = Days.timing();
        SessionInput input = SessionInput.of(plan, List.of(), List.of());
        List<SourcePulls> first = Session.read(Days.ofLogs(plan, one()));
        Amendments assumed = new Amendments(Map.of(), Set.of(3), Map.of(), Set.of(2), Set.of());
        JoinedDay joined = JoinedDay.of(
                plan,
                List.of(new JoinedDay.Part(input, first), new JoinedDay.Part(input.withAmendments(assumed), first)));

        assertThat(joined.input().amendments().assumed()).containsExactly(5);
        assertThat(joined.input().amendments().lifted()).containsExactly(6);
    }

    @Test
    void splittingOneLogIntoFilesLeavesTheAnswer() {
        SessionResult whole = Session.evaluate(Days.ofLogs(Days.timing(), one()).withSettings(settings()));
        SessionResult split =
                Session.evaluate(Days.ofLogs(Days.timing(), several()).withSettings(settings()));

        assertThat(advances(whole)).containsExactly(20.0, 22.0, 24.0);
        assertThat(advances(split)).containsExactly(20.0, 22.0, 24.0);
        for (int index = 0; index < FACTORS.length; index++) {
            assertThat(torque(split.pulls().get(index)))
                    .isCloseTo(torque(whole.pulls().get(index)), offset(1e-6));
        }
        assertThat(split.verdict().orElseThrow().advice().setting())
                .isEqualTo(whole.verdict().orElseThrow().advice().setting());
    }

    @Test
    void rowsThatNameAFileBelongToItAlone() {
        List<AskedSetting> rows = List.of(
                Days.asked(Optional.of("pull2.csv"), OptionalInt.of(1), OptionalInt.empty(), 26),
                Days.asked(Optional.of("other.csv"), OptionalInt.of(1), OptionalInt.empty(), 30));
        SessionResult result =
                Session.evaluate(Days.ofLogs(Days.timing(), several()).withSettings(rows));

        assertThat(advances(result)).containsExactly(-1.0, 26.0, -1.0);
        assertThat(Days.codes(result.findings())).contains(FindingCode.SETTINGS_FOR_NO_FILE);
    }

    @Test
    void aCountOrANumberThatDoesNotMatchIsAnError() {
        AskedSetting unnumbered = Days.asked(Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), 20);
        AskedSetting fourth = Days.asked(Optional.empty(), OptionalInt.of(4), OptionalInt.empty(), 20);
        SessionResult count =
                Session.evaluate(Days.ofLogs(Days.timing(), one()).withSettings(List.of(unnumbered, unnumbered)));
        SessionResult number =
                Session.evaluate(Days.ofLogs(Days.timing(), one()).withSettings(List.of(fourth)));

        assertThat(Days.codes(count.findings())).contains(FindingCode.SETTINGS_COUNT);
        assertThat(advances(count)).containsOnly(-1.0);
        assertThat(Days.codes(number.findings())).contains(FindingCode.SETTINGS_FOR_NO_PULL);
    }

    @Test
    void theOrderColumnPutsPullsIntoTheOrderOfTheDay() {
        SessionResult result =
                Session.evaluate(Days.ofLogs(Days.timing(), one()).withSettings(settings(3, 1, 2)));

        assertThat(advances(result)).containsExactly(22.0, 24.0, 20.0);
        assertThat(result.pulls().stream().map(MeasuredPull::number)).containsExactly(2, 3, 1);
        assertThat(result.pulls().stream().map(MeasuredPull::order)).containsExactly(0.0, 1.0, 2.0);
    }

    @Test
    void aStruckPullDoesNotCount() {
        SessionResult result = Session.evaluate(Days.ofLogs(Days.timing(), one())
                .withSettings(settings())
                .withAmendments(new Amendments(Map.of(2, "fan was off"), Set.of(), Map.of())));

        assertThat(result.pulls().get(1).standing()).isEqualTo(MeasuredPull.Status.STRUCK);
        assertThat(result.verdict().orElseThrow().timing().orElseThrow().pulls())
                .containsExactly(1, 3);
    }

    @Test
    void theFirstPullsAreThrownAwayOnceOverAllFiles() {
        SweepPlan plan = Days.plan("""
                [band]
                from_rpm = 3000
                to_rpm = 5500
                [pull]
                throw_away_first = 2
                [timing]
                start_deg = 20
                least_deg = 10
                most_deg = 46
                """);
        List<MeasuredPull.Status> split = Session.evaluate(Days.ofLogs(plan, several())).pulls().stream()
                .map(MeasuredPull::standing)
                .toList();

        assertThat(split)
                .containsExactly(
                        MeasuredPull.Status.THROWN_AWAY, MeasuredPull.Status.THROWN_AWAY, MeasuredPull.Status.USED);
    }

    @Test
    void replaySaysTheAlarmsThatWouldHaveSounded() {
        SweepPlan plan = Days.plan("""
                [band]
                from_rpm = 3000
                to_rpm = 5500
                [timing]
                start_deg = 20
                least_deg = 10
                most_deg = 46
                [limits]
                most_rpm = 5700
                """);
        Replay replay = Replay.of(Days.ofLogs(plan, one()).withSettings(settings()));

        assertThat(replay.steps()).hasSize(3);
        assertThat(replay.steps()).allSatisfy(step -> assertThat(step.alarms()).isNotEmpty());
        assertThat(replay.stoppedAfter()).hasValue(1);
        assertThat(replay.pullsSaved()).isEqualTo(2);
    }

    private static SweepPlan corrected(String more) {
        return Days.plan("""
                [band]
                from_rpm = 3000
                to_rpm = 5500
                [timing]
                start_deg = 20
                least_deg = 10
                most_deg = 46
                """ + more);
    }

    private static Named inAir(double humidity, double baro) {
        BenchLog log = Days.pull(new BenchLog(50, 1), 1)
                .with(Channel.of(Role.HUMIDITY), row -> humidity)
                .with(Channel.of(Role.BAROMETER), row -> baro)
                .with(Channel.of(Role.INLET_AIR_TEMPERATURE), row -> 293.15);
        return new Named("wet.csv", log);
    }

    @Test
    void aHumiditySensorALittleOverIsHeldAtSaturationAndSaidSo() {
        SweepPlan plan = corrected("[air]\nstandard = \"iso-1585\"\n");
        MeasuredPull over =
                Session.evaluate(Days.ofLogs(plan, inAir(1.003, 98000))).pulls().get(0);
        MeasuredPull saturated =
                Session.evaluate(Days.ofLogs(plan, inAir(1, 98000))).pulls().get(0);
        MeasuredPull broken =
                Session.evaluate(Days.ofLogs(plan, inAir(1.3, 98000))).pulls().get(0);

        assertThat(over.isUsed()).isTrue();
        assertThat(torque(over)).isCloseTo(torque(saturated), offset(1e-9));
        assertThat(Days.codes(over.findings())).contains(FindingCode.AIR_HUMIDITY_HELD);
        assertThat(Days.codes(saturated.findings())).doesNotContain(FindingCode.AIR_HUMIDITY_HELD);
        assertThat(broken.isUsed()).isFalse();
        assertThat(Days.codes(broken.findings())).contains(FindingCode.AIR_HUMIDITY_OUT_OF_RANGE);
    }

    @Test
    void aLogThatIsCorrectedIsNotCorrectedAgainAndSaidSo() {
        SweepPlan raw = corrected("[air]\nstandard = \"none\"\n");
        SweepPlan already = corrected("[air]\nstandard = \"iso-1585\"\n[log]\ncorrected_by = \"iso-1585\"\n");
        SweepPlan not = corrected("[air]\nstandard = \"iso-1585\"\n[log]\ncorrected_by = \"none\"\n");
        SessionResult kept = Session.evaluate(Days.ofLogs(already, inAir(0.5, 95000)));
        double plain = torque(
                Session.evaluate(Days.ofLogs(raw, inAir(0.5, 95000))).pulls().get(0));

        assertThat(torque(kept.pulls().get(0))).isCloseTo(plain, offset(1e-9));
        assertThat(Days.codes(kept.findings())).contains(FindingCode.LOG_CORRECTED_ALREADY);
        assertThat(torque(Session.evaluate(Days.ofLogs(not, inAir(0.5, 95000)))
                        .pulls()
                        .get(0)))
                .isGreaterThan(1.01 * plain);
    }

    @Test
    void aPlanWithSeaLevelPressureBesideALoggedBarometerIsSaid() {
        SweepPlan plan = corrected("[air]\nstandard = \"iso-1585\"\nbaro_kpa = 101.3\n");

        assertThat(Days.codes(
                        Session.evaluate(Days.ofLogs(plan, inAir(0.5, 95000))).findings()))
                .contains(FindingCode.AIR_BAROMETER_LOOKS_SEA_LEVEL);
        assertThat(Days.codes(
                        Session.evaluate(Days.ofLogs(plan, inAir(0.5, 101200))).findings()))
                .doesNotContain(FindingCode.AIR_BAROMETER_LOOKS_SEA_LEVEL, FindingCode.AIR_BAROMETERS_DIFFER);
    }

    @Test
    @DisplayName(
            "Rule 9: boost that differs by over 1 % is said and never scaled by; a correction of boosted figures is doubted")
    void boostThatDiffersConfounds() {
        SweepPlan plan = corrected("[air]\nstandard = \"iso-1585\"\n[engine]\ninduction = \"boosted\"\n");
        SessionResult apart = boosted(plan, 160e3, 163e3);
        SessionResult alike = boosted(plan, 160e3, 160.5e3);

        assertThat(Days.codes(apart.findings())).contains(FindingCode.BOOST_DIFFERS, FindingCode.BOOST_CORRECTED_TWICE);
        assertThat(Days.codes(alike.findings())).doesNotContain(FindingCode.BOOST_DIFFERS);
        assertThat(torque(apart.pulls().get(1))).isCloseTo(torque(alike.pulls().get(1)), offset(1e-9));
    }

    private static SessionResult boosted(SweepPlan plan, double first, double second) {
        Channel manifold = Channel.of(Role.MANIFOLD_PRESSURE);
        Named one = inAir(0.5, 98000);
        Named other = new Named("second.csv", inAir(0.5, 98000).log());
        one.log().with(manifold, row -> first);
        other.log().with(manifold, row -> second);
        return Session.evaluate(Days.ofLogs(plan, one, other));
    }

    @Test
    @DisplayName("Rule 9: of several lambda sensors the leanest counts for limits, the first for the setting")
    void theLeanestSensorCountsForLimits() {
        BenchLog log = Days.pull(new BenchLog(50, 1), 1)
                .with(
                        Channel.of(Role.LAMBDA),
                        row -> 0.86 + 0.002 * Math.sin(97 * row.getOrDefault(BenchLog.TIME, 0.0)))
                .with(
                        new Channel(Role.LAMBDA, 2),
                        row -> 0.95 + 0.002 * Math.sin(97 * row.getOrDefault(BenchLog.TIME, 0.0)));
        SweepPlan plan = corrected("[limits]\nlean_lambda = 0.92\nlean_for_s = 0.3\n");
        MeasuredPull pull = Session.evaluate(Days.ofLogs(plan, new Named("two.csv", log)))
                .pulls()
                .get(0);

        assertThat(pull.setting().lambda().orElseThrow().value()).isCloseTo(0.86, offset(1e-3));
        assertThat(pull.leanestLambda().orElseThrow().value()).isCloseTo(0.95, offset(1e-3));
        assertThat(pull.isClean()).isFalse();
    }

    @Test
    void aStretchThatDoesNotFitIntoMemoryIsAnErrorAndNoPull() {
        SessionInput input = Days.ofLogs(Days.timing(), one());
        assertThat(Session.read(input, List.of(), 1_000_000, UnaryOperator.identity())
                        .get(0)
                        .candidates())
                .hasSameSizeAs(Session.read(input).get(0).candidates());
        SourcePulls refused =
                Session.read(input, List.of(), 10_000, UnaryOperator.identity()).get(0);
        assertThat(refused.candidates()).isEmpty();
        assertThat(refused.findings())
                .singleElement()
                .matches(finding -> finding.isError() && finding.code() == FindingCode.LOG_TOO_LARGE_FOR_MEMORY);
    }
}
