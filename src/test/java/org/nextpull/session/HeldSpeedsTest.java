package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.Action;
import org.nextpull.advice.AnswerRow;
import org.nextpull.advice.MapState;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.BenchLog;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;

/** Plateaus at a held speed, as a log has them. */
class HeldSpeedsTest {
    private static final SweepPlan PLAN = Days.plan("""
            [band]
            from_rpm = 2900
            to_rpm = 5100
            [pull]
            kind = "hold"
            [timing]
            start_deg = 16
            least_deg = 10
            most_deg = 46
            """);

    private static Stream<Figures.AtSpeed> rows(MeasuredPull pull) {
        return pull.figures().orElseThrow().rows().stream();
    }

    @Test
    void plateausAFewRevolutionsApartAreOneRowEachWithItsTime() {
        BenchLog log = new BenchLog(20, 1).noise(3, 0.5);
        for (double rpm : List.of(2994.0, 3006.0, 4497.0)) {
            log.idle(5);
            for (int deg = 18; deg <= 26; deg += 4) {
                log.advance(deg).hold(rpm, 6);
            }
        }
        List<MeasuredPull> pulls = Session.evaluate(Days.ofLogs(PLAN, new Days.Named("held.csv", log)))
                .pulls();

        assertThat(pulls).hasSize(9).allMatch(MeasuredPull::isUsed);
        assertThat(pulls.stream().flatMap(HeldSpeedsTest::rows).map(Figures.AtSpeed::rpm))
                .containsExactly(3000.0, 3000.0, 3000.0, 3000.0, 3000.0, 3000.0, 4500.0, 4500.0, 4500.0);
        assertThat(pulls.stream()
                        .flatMap(HeldSpeedsTest::rows)
                        .map(row -> row.heldAtS().orElseThrow()))
                .isSorted();
        assertThat(pulls.stream()
                        .flatMap(HeldSpeedsTest::rows)
                        .map(row -> row.advance().orElseThrow().deg()))
                .startsWith(18.0, 22.0, 26.0);
    }

    /** Three speeds, each with a best advance of its own: 22, 26 and 30 deg. */
    private static BenchLog stepped() {
        BenchLog log = new BenchLog(20, 1).noise(3, 0.5);
        for (int speed = 0; speed < 3; speed++) {
            double best = 22 + 4 * speed;
            log.idle(90);
            for (int off : List.of(-8, -4, 0, 4, 8, 2, -2)) {
                log.advance(best + off).torqueFactor(1 - 3e-4 * off * off).hold(3000 + 1000 * speed, 6);
            }
        }
        return log;
    }

    @Test
    void sparkSteppedAtHeldSpeedsIsNotPooledIntoOneOptimum() {
        SessionResult result = Session.evaluate(Days.ofLogs(PLAN, new Days.Named("held.csv", stepped())));

        Verdict verdict = result.verdict().orElseThrow();
        MapState map = verdict.map().orElseThrow();
        assertThat(map.rows()).extracting(AnswerRow::rpm).containsExactly(3000.0, 4000.0, 5000.0);
        for (int speed = 0; speed < 3; speed++) {
            assertThat(map.rows().get(speed).answer().orElseThrow().peakDeg().orElseThrow())
                    .isCloseTo(22 + 4 * speed, within(0.7));
        }
        assertThat(Days.codes(verdict.findings())).contains(FindingCode.MAP_OF_HELD_SPEEDS);
        assertThat(result.repeatability().scatter()).isEmpty();
    }

    @Test
    void thePullThatProvesTheMapIsHeldAgainstThePlateaus() {
        BenchLog log = stepped();
        log.idle(90);
        log.advance(26).torqueFactor(0.98).pull(2700, 5300, 400);
        SessionResult result = Session.evaluate(Days.ofLogs(PLAN, new Days.Named("held.csv", log)));

        Finding said = result.findings().stream()
                .filter(finding -> finding.code() == FindingCode.HELD_AGAINST_PULL)
                .findFirst()
                .orElseThrow();
        // of the plateaus only that at 4,000 rpm and 26 deg stood at the pull's advance
        assertThat(((Detail.Amount) said.details().get(0)).number()).isCloseTo(98, within(0.6));
    }

    @Test
    void betweenTwoHeldSpeedsTheMapGoesAStepBeyondWhatStoodAndNotBeyondWhatBothRanClean() {
        SweepPlan plan = Days.plan("""
                [band]
                from_rpm = 2900
                to_rpm = 5100
                [pull]
                kind = "hold"
                [timing]
                sets = "map"
                map_rpm = [2500, 3000, 3500, 4000, 4500, 5000, 5500]
                present_map = [[2500, 14], [3000, 16], [4000, 17], [5000, 26], [5500, 27]]
                least_deg = 10
                most_deg = 46
                largest_step_deg = 3
                """);
        BenchLog log = new BenchLog(20, 1).noise(3, 0.5);
        for (int speed = 0; speed < 3; speed++) {
            log.idle(90);
            for (int off : List.of(-6, -3, 0, 3, 6)) {
                log.advance(24 + off).torqueFactor(1 - 6e-4 * off * off).hold(3000 + 1000 * speed, 6);
            }
        }
        SparkMap next = Session.evaluate(Days.ofLogs(plan, new Days.Named("held.csv", log)))
                .verdict()
                .flatMap(verdict -> verdict.advice().setting())
                .flatMap(EngineSetting::map)
                .orElseThrow();
        assertThat(next.degAt(3500)).as("16.5 stood").isBetween(18.0, 19.5);
        assertThat(next.degAt(4500)).as("21.5 stood, best is 24").isBetween(22.0, 24.5);
        assertThat(next.degAt(2500)).as("not between two").isLessThanOrEqualTo(14);
        assertThat(next.degAt(5500)).as("not between two").isLessThanOrEqualTo(27);
    }

    @Test
    void pullsOfOneHeldSpeedAreSetBesideThoseOfThatSpeed() {
        SessionResult result = Session.evaluate(Days.ofLogs(PLAN, new Days.Named("held.csv", stepped())));
        List<MeasuredPull> pulls = result.pulls();

        assertThat(PullChange.of(result, pulls.get(7)).best())
                .as("first at 4,000 rpm")
                .isEmpty();
        PullChange tenth = PullChange.of(result, pulls.get(9));
        assertThat(tenth.baseline().orElseThrow().pull()).isEqualTo(8);
        assertThat(tenth.best().orElseThrow().pull()).isEqualTo(9);
        assertThat(PullChange.heldRpm(pulls.get(9))).hasValue(4000);
    }

    @Test
    void anAdvanceThatWasCleanAtOneHeldSpeedClearsNoOther() {
        BenchLog log = new BenchLog(20, 1).noise(3, 0.5);
        log.idle(90);
        for (double deg = 18; deg <= 22; deg += 2) {
            log.advance(deg).torqueFactor(1 - 3e-4 * (deg - 34) * (deg - 34)).hold(3000, 6);
        }
        log.idle(90);
        for (double deg = 18; deg <= 34; deg += 2) {
            log.advance(deg).torqueFactor(1 - 3e-4 * (deg - 40) * (deg - 40)).hold(5000, 6);
        }
        Verdict verdict = Session.evaluate(Days.ofLogs(PLAN, new Days.Named("held.csv", log)))
                .verdict()
                .orElseThrow();

        SparkMap next = verdict.advice().setting().flatMap(EngineSetting::map).orElseThrow();
        assertThat(next.degAt(3000)).isLessThanOrEqualTo(24);
        assertThat(verdict.advice().action()).isNotEqualTo(Action.STOP);
        assertThat(verdict.map().orElseThrow().leftByLeave()).isEmpty();
    }
}
