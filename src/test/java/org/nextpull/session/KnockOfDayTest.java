package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.advice.Action;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.Role;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.BenchLog;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.Days.Named;
import org.nextpull.unit.Advance;

/** Knock wherever the engine is under load, through the whole chain, over invented logs with a band of 3000 to 5500 rpm. */
class KnockOfDayTest {
    private static final Channel KNOCK = Channel.of(Role.KNOCK_EVENTS);
    private static final Channel LEVEL = Channel.of(Role.KNOCK_LEVEL);
    private static final double[] CLIMB = {20, 20, 22, 24};

    private static BenchLog climb() {
        BenchLog log = new BenchLog(50, 1).noise(2, 0.2);
        double factor = 0.97;
        for (double deg : CLIMB) {
            log.advance(deg);
            Days.pull(log, factor);
            factor += 0.01;
        }
        return log;
    }

    private static double at(Map<Channel, Double> cells, Channel channel) {
        return cells.getOrDefault(channel, 0.0);
    }

    private static ToDoubleFunction<Map<Channel, Double>> knockAbove(double deg, double fromRpm, double toRpm) {
        return cells -> at(cells, BenchLog.ADVANCE) >= deg
                        && at(cells, BenchLog.THROTTLE) > 0.3
                        && at(cells, BenchLog.SPEED) >= fromRpm
                        && at(cells, BenchLog.SPEED) <= toRpm
                ? 1
                : 0;
    }

    private static SessionResult day(BenchLog log) {
        return day(Days.timing(), log);
    }

    private static SessionResult day(SweepPlan plan, BenchLog log) {
        return Session.evaluate(Days.ofLogs(plan, new Named("day.csv", log)));
    }

    private static double next(SessionResult result) {
        return result.verdict()
                .orElseThrow()
                .advice()
                .setting()
                .flatMap(setting -> setting.advance())
                .map(Advance::deg)
                .orElse(-1.0);
    }

    private static MeasuredPull last(SessionResult result) {
        return result.pulls().get(result.pulls().size() - 1);
    }

    @Test
    void withoutKnockTheClimbGoesOn() {
        SessionResult result = day(climb().with(KNOCK, cells -> 0));
        assertThat(next(result)).isEqualTo(26);
        assertThat(Days.codes(result.findings())).contains(FindingCode.KNOCK_NEVER_COUNTED);
        assertThat(result.pulls()).allMatch(pull -> pull.knock().mark() == KnockMark.NONE);
    }

    @Test
    void knockBelowTheBandMarksThePullSoundsAndBlocksTheMargin() {
        SessionResult result = day(climb().with(KNOCK, knockAbove(24, 2800, 2950)));
        MeasuredPull pull = last(result);
        assertThat(pull.knock().isHeard()).isTrue();
        assertThat(pull.isUsed()).isTrue();
        assertThat(pull.knock().speeds().orElseThrow().lowRpm()).isBetween(2790.0, 2830.0);
        assertThat(pull.knock().speeds().orElseThrow().highRpm()).isBetween(2920.0, 2960.0);
        assertThat(pull.knock().at())
                .extracting(KnockHeard.KnockAt::advance)
                .containsOnly(Optional.of(Advance.ofDeg(24)));
        assertThat(Days.codes(pull.findings())).contains(FindingCode.KNOCK_BESIDE_BAND);
        assertThat(result.measured().get(3).alarms()).anyMatch(alarm -> alarm.limit() == Limit.KNOCK);
        assertThat(next(result)).isLessThan(22);
        assertThat(Days.codes(result.findings())).doesNotContain(FindingCode.KNOCK_NEVER_COUNTED);
    }

    @Test
    void whatIsLoggedBeforeTheBandIsReachedBelongsToThePullToo() {
        BenchLog log = climb();
        log.advance(24)
                .idle(3)
                .move(1, t -> 2000 + 800 * t, 0.6)
                .sweep(2800, 5800, 500)
                .idle(3);
        SessionResult result = day(log.with(KNOCK, knockAbove(24, 2000, 2500)));
        assertThat(result.pulls()).hasSize(5);
        assertThat(last(result).knock().isHeard()).isTrue();
        assertThat(last(result).knock().speeds().orElseThrow().highRpm()).isLessThan(2510);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.949, 0.94, 0.5})
    void aStretchThatIsNoPullIsKeptForItsKnockAndCanBeLifted(double throttle) {
        BenchLog log = climb();
        log.advance(26)
                .move(6, t -> 2800 + 500 * t, throttle, rpm -> BenchLog.torque(rpm))
                .idle(3);
        BenchLog knocking = log.with(KNOCK, knockAbove(26, 3500, 4500));
        SessionInput input = Days.ofLogs(Days.timing(), new Named("day.csv", knocking));
        SessionResult result = Session.evaluate(input);

        assertThat(result.pulls()).hasSize(5);
        assertThat(last(result).standing()).isEqualTo(MeasuredPull.Status.NO_PULL);
        assertThat(last(result).figures()).isEmpty();
        assertThat(last(result).knock().isHeard()).isTrue();
        assertThat(last(result).setting().advance()).contains(Advance.ofDeg(26));
        assertThat(Days.codes(last(result).findings())).contains(FindingCode.PULL_KNOCK_ALONE);
        assertThat(next(result)).as("26 less the margin of 2 is blocked").isLessThan(24);
        SessionResult lifted = Session.evaluate(input.withAmendments(new Amendments(Map.of(), Set.of(5), Map.of())));
        assertThat(next(lifted)).isEqualTo(26);
    }

    @Test
    void aStretchThatIsNoPullTakesTheSettingThatWasSetBeforeIt() {
        BenchLog log = climb().without(BenchLog.ADVANCE);
        log.idle(2).move(2, t -> 3000 + 500 * t, 0.7).idle(3);
        log.with(KNOCK, cells -> at(cells, BenchLog.THROTTLE) == 0.7 ? 1 : 0);
        List<AskedSetting> settings = List.of(asked(20), asked(20), asked(22), asked(24));
        SessionResult result = Session.evaluate(
                Days.ofLogs(Days.timing(), new Named("day.csv", log)).withSettings(settings));
        assertThat(Days.codes(result.findings())).doesNotContain(FindingCode.SETTINGS_COUNT);
        assertThat(last(result).standing()).isEqualTo(MeasuredPull.Status.NO_PULL);
        assertThat(last(result).setting().advance()).contains(Advance.ofDeg(24));
        assertThat(next(result)).isLessThan(22);
    }

    private static AskedSetting asked(double deg) {
        return Days.asked(Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), deg)
                .withKnock(KnockMark.NOT_MEASURED);
    }

    @Test
    void aDayOfNothingButRefusedStretchesIsNotAskedForTheSameAgain() {
        BenchLog log = new BenchLog(50, 1)
                .advance(20)
                .idle(3)
                .move(6, t -> 2800 + 500 * t, 0.949)
                .idle(3);
        SessionResult result = day(log.with(KNOCK, knockAbove(20, 3000, 5000)));
        assertThat(result.verdict().orElseThrow().advice().action()).isNotEqualTo(Action.REPEAT);
        assertThat(next(result)).isLessThan(18);
    }

    /** The sensor shows the lean idle still when it knocks: that blocks the mixture that was burnt, not only one as lean as idle. */
    @Test
    void aSensorThatAnswersLateDoesNotHideTheMixtureThatKnocked() {
        BenchLog log = climb();
        log.advance(26)
                .move(6, t -> 2800 + 500 * t, 0.949, rpm -> BenchLog.torque(rpm))
                .idle(3);
        double[] shown = {1};
        log.with(BenchLog.LAMBDA, cells -> {
            double burnt = at(cells, BenchLog.THROTTLE) > 0.3 ? 0.87 : 1;
            shown[0] += (burnt - shown[0]) * 0.1;
            return shown[0];
        });
        SessionResult result = day(log.with(KNOCK, knockAbove(26, 2800, 2850)));
        assertThat(last(result).standing()).isEqualTo(MeasuredPull.Status.NO_PULL);
        assertThat(last(result).setting().lambda().orElseThrow().value()).isBetween(0.869, 0.875);
        assertThat(next(result)).isLessThan(24);
    }

    @Test
    void countsAtIdleAreNoKnock() {
        SessionResult result = day(climb().with(KNOCK, cells -> at(cells, BenchLog.THROTTLE) < 0.3 ? 3 : 0));
        assertThat(result.pulls()).hasSize(4).allMatch(pull -> pull.knock().mark() == KnockMark.NONE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e9, -1, Double.NaN})
    void whatCannotBeIsNotMeasuredEvenInAPartOfThePull(double value) {
        BenchLog log = climb().with(KNOCK, cells -> 0);
        int rows = log.rows();
        // the last pull alone, from 3800 to 4300 rpm
        for (int row = rows * 3 / 4; row < rows; row++) {
            double rpm = log.value(row, BenchLog.SPEED);
            if (rpm > 3800 && rpm < 4300) {
                if (Double.isNaN(value)) {
                    log.blank(row, KNOCK);
                } else {
                    log.set(row, KNOCK, value);
                }
            }
        }
        SessionResult result = day(log);
        assertThat(result.pulls())
                .extracting(pull -> pull.knock().mark())
                .containsExactly(KnockMark.NONE, KnockMark.NONE, KnockMark.NONE, KnockMark.NOT_MEASURED);
        assertThat(Days.codes(last(result).findings())).contains(FindingCode.KNOCK_NOT_READ);
    }

    @Test
    void aCounterThatReportsSlowlyIsMeasured() {
        SessionResult result = day(climb().with(KNOCK, cells -> 0).thinned(Map.of(KNOCK, 10)));
        assertThat(result.pulls()).allMatch(pull -> pull.knock().mark() == KnockMark.NONE);
    }

    @Test
    void aLevelAboveItsLimitIsKnockAndIsKeptBySpeed() {
        BenchLog log = climb().with(LEVEL, cells -> at(cells, BenchLog.ADVANCE) / 10 + at(cells, BenchLog.SPEED) / 1e4);
        SessionResult without = day(log);
        assertThat(without.pulls()).allMatch(pull -> pull.knock().mark() == KnockMark.NOT_MEASURED);
        assertThat(Days.codes(without.findings())).contains(FindingCode.KNOCK_LEVEL_NOT_USED);

        SweepPlan limited = Days.plan("""
                [band]
                from_rpm = 3000
                to_rpm = 5500
                [timing]
                start_deg = 20
                least_deg = 10
                most_deg = 46
                [limits]
                knock_level = 2.8
                """);
        SessionResult result = day(limited, log);
        assertThat(result.pulls())
                .extracting(pull -> pull.knock().mark())
                .containsExactly(KnockMark.NONE, KnockMark.NONE, KnockMark.NONE, KnockMark.HEARD);
        assertThat(last(result).knock().speeds().orElseThrow().lowRpm()).isBetween(3980.0, 4030.0);
        assertThat(last(result).knock().levels()).anySatisfy(level -> {
            assertThat(level.rpm()).isEqualTo(5000);
            assertThat(level.level()).isBetween(2.9, 2.92);
        });
        assertThat(next(result)).isLessThan(22);
    }

    private static BenchLog retarding(double byDeg) {
        BenchLog log = climb().with(KNOCK, cells -> 0);
        for (int row = 0; row < log.rows(); row++) {
            double rpm = log.value(row, BenchLog.SPEED);
            if (log.value(row, BenchLog.ADVANCE) == 24 && rpm > 3900 && rpm < 4400) {
                log.set(row, BenchLog.ADVANCE, 24 - byDeg);
            }
        }
        return log;
    }

    @Test
    void advanceThatTheIgnitionTakesOutIsKnockHeard() {
        SessionResult result = day(retarding(4));
        assertThat(last(result).knock().mark()).isEqualTo(KnockMark.HEARD);
        assertThat(last(result).knock().takenOut()).allMatch(out -> out.rpm() >= 3900 && out.rpm() <= 4500);
        assertThat(last(result).knock().speeds()).isPresent();
        assertThat(result.pulls().subList(0, 3)).noneMatch(pull -> pull.knock().isHeard());
        assertThat(Days.codes(result.findings())).contains(FindingCode.SPARK_TAKEN_OUT_KNOCK);
        assertThat(next(result)).isLessThan(22);
    }

    /** A day of maps at 500 rpm, the last one with advance taken out between 3900 and 4600 rpm. */
    private static BenchLog mapped(List<SparkMap> maps, double byDeg) {
        BenchLog log = new BenchLog(50, 1).noise(2, 0.2);
        for (int pull = 0; pull < maps.size(); pull++) {
            log.advance(pull);
            Days.pull(log, 0.97 + 0.01 * pull);
        }
        for (int row = 0; row < log.rows(); row++) {
            double rpm = log.value(row, BenchLog.SPEED);
            int pull = (int) log.value(row, BenchLog.ADVANCE);
            boolean isTaken = pull == maps.size() - 1 && rpm > 3900 && rpm < 4600;
            log.set(row, BenchLog.ADVANCE, maps.get(pull).degAt(rpm) - (isTaken ? byDeg : 0));
        }
        return log.with(KNOCK, cells -> 0);
    }

    private static SparkMap nextMap(SessionResult result) {
        return result.verdict()
                .orElseThrow()
                .advice()
                .setting()
                .flatMap(EngineSetting::spark)
                .orElseThrow();
    }

    private static SessionResult dayOfMaps(List<SparkMap> maps, double byDeg) {
        return day(Days.plan("""
                        [band]
                        from_rpm = 3000
                        to_rpm = 5500
                        [timing]
                        sets = "map"
                        map_rpm = [3000, 3500, 4000, 4500, 5000, 5500]
                        present_map = [[3000, 16], [5500, 20]]
                        least_deg = 10
                        most_deg = 46
                        """), mapped(maps, byDeg));
    }

    /** The present map and the two that are asked for after it. */
    private static List<SparkMap> asked() {
        List<SparkMap> maps = new ArrayList<>(List.of(SparkMap.of(new double[] {3000, 5500}, new double[] {16, 20})));
        maps.add(nextMap(dayOfMaps(maps, 0)));
        maps.add(nextMap(dayOfMaps(maps, 0)));
        return maps;
    }

    @Test
    void advanceThatIsTakenOutAtSomeSpeedsOfAMapIsKnockThere() {
        List<SparkMap> maps = asked();
        SessionResult clean = dayOfMaps(maps, 0);
        SessionResult result = dayOfMaps(maps, 4);

        assertThat(clean.pulls()).noneMatch(pull -> pull.knock().isHeard());
        assertThat(result.pulls().subList(0, 2)).noneMatch(pull -> pull.knock().isHeard());
        assertThat(last(result).knock().mark()).isEqualTo(KnockMark.HEARD);
        assertThat(last(result).knock().takenOut())
                .isNotEmpty()
                .allMatch(out -> out.rpm() >= 3900 && out.rpm() <= 4600);
        assertThat(Days.codes(result.findings())).contains(FindingCode.SPARK_TAKEN_OUT_KNOCK);
        assertThat(nextMap(result).degAt(4250))
                .as("the speed that knocked goes back")
                .isLessThan(maps.get(2).degAt(4250) - 2);
        assertThat(result.verdict().orElseThrow().map().orElseThrow().knockLimits())
                .as("the others are free")
                .isNotEmpty()
                .allMatch(limit -> limit.rpm() >= 3750 && limit.rpm() <= 4750);
    }

    @Test
    void whatAnOperatorSetsOtherwiseThanAskedIsNoKnock() {
        List<SparkMap> own = asked();
        own.set(2, own.get(2).shiftedBy(-3));
        assertThat(dayOfMaps(own, 4).pulls()).noneMatch(pull -> pull.knock().isHeard());
        assertThat(dayOfMaps(asked(), 1.9).pulls())
                .noneMatch(pull -> pull.knock().isHeard());
        assertThat(dayOfMaps(asked().subList(0, 1), 4).pulls())
                .as("the present map of a plan is rough")
                .noneMatch(pull -> pull.knock().isHeard());
    }

    @Test
    void twoDegreesAreTheJitterOfALog() {
        assertThat(day(retarding(1.9)).pulls()).noneMatch(pull -> pull.knock().isHeard());
    }

    @Test
    void theOperatorMaySayThatItWasNoKnock() {
        AskedSetting quiet = Days.asked(Optional.empty(), OptionalInt.of(4), OptionalInt.empty(), 24);
        SessionResult result = Session.evaluate(
                Days.ofLogs(Days.timing(), new Named("day.csv", retarding(4))).withSettings(List.of(quiet)));
        assertThat(last(result).knock().mark()).isEqualTo(KnockMark.NONE);
        assertThat(Days.codes(result.findings()))
                .contains(FindingCode.SPARK_TAKEN_OUT)
                .doesNotContain(FindingCode.SPARK_TAKEN_OUT_KNOCK);
    }

    @Test
    void whatALaterPullShowsDoesNotReachBackInAReplay() {
        SessionInput input = Days.ofLogs(Days.timing(), new Named("day.csv", retarding(4)));
        DayByPull day = DayByPull.of(input);
        for (int count = 1; count <= 4; count++) {
            assertThat(day.after(count).pulls().subList(0, Math.min(3, count)))
                    .noneMatch(pull -> pull.knock().isHeard());
        }
        assertThat(day.after(4).pulls().get(3).knock().isHeard()).isTrue();
    }
}
