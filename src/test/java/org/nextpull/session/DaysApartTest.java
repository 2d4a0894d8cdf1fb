package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.nextpull.finding.FindingCode;
import org.nextpull.pull.BenchLog;

/** How pulls of different days are told apart. */
class DaysApartTest {
    private static final double DATE_S = 1.75e9;
    private static final double HOUR_S = 3600;

    /** Pulls of files: name, then the clock at the start of each pull. */
    private static final class Files {
        private final List<DayOrder.Known> pulls = new ArrayList<>();

        Files file(String name, double... clocks) {
            for (double clock : clocks) {
                pulls.add(new DayOrder.Known(
                        name, pulls.size() + 1, true, OptionalDouble.empty(), OptionalDouble.of(clock)));
            }
            return this;
        }

        List<Integer> days(boolean isDated, boolean countsOn) {
            DaysApart days = DaysApart.of(pulls, isDated, countsOn);
            return IntStream.rangeClosed(1, pulls.size()).mapToObj(days::dayOf).toList();
        }
    }

    @Test
    void filesOfSeveralPullsWhoseClockBeginsAnewAreDays() {
        Files files = new Files().file("a.csv", 5, 60).file("b.csv", 5, 60).file("c.csv", 120, 180);
        assertThat(files.days(false, false)).containsExactly(0, 0, 1, 1, 1, 1);
    }

    @Test
    void filesOfOnePullEachAreOneDay() {
        Files files = new Files().file("a.csv", 5).file("b.csv", 5).file("c.csv", 5);
        assertThat(files.days(false, false)).containsOnly(0);
    }

    @Test
    void anOrderColumnThatCountsOnSaysOneDay() {
        Files files = new Files().file("a.csv", 5, 60).file("b.csv", 5, 60);
        assertThat(files.days(false, true)).containsOnly(0);
    }

    @Test
    void datesTellDaysApartByAPauseAndNotByMidnight() {
        Files files = new Files().file("a.csv", DATE_S, DATE_S + 5 * HOUR_S).file("b.csv", DATE_S + 10 * HOUR_S);
        files.file("c.csv", DATE_S + 17 * HOUR_S);
        assertThat(files.days(true, true)).containsExactly(0, 0, 0, 1);
    }

    @Test
    void datesInAllNamesTellDaysApart() {
        Files files = new Files()
                .file("2025-05-03/run1.csv", 5)
                .file("2025-05-03/run2.csv", 5)
                .file("20250517-run1.csv", 5);
        assertThat(files.days(false, false)).containsExactly(0, 0, 1);
        files.file("last.csv", 5);
        assertThat(files.days(false, false)).containsOnly(0);
    }

    @Test
    void whatToldThemApartIsSaidAndThePullsCarryTheirDay() {
        SessionInput input = Days.ofLogs(
                Days.timing(),
                new Days.Named("first.csv", Days.pull(Days.pull(new BenchLog(50, 1), 1), 1.01)),
                new Days.Named("second.csv", Days.pull(Days.pull(new BenchLog(50, 2), 1), 1.01)));
        SessionResult result = Session.evaluate(input);
        assertThat(result.pulls()).extracting(pull -> pull.origin().day()).containsExactly(0, 0, 1, 1);
        assertThat(Days.codes(result.findings())).contains(FindingCode.SEVERAL_DAYS);
        SessionResult one =
                Session.evaluate(Days.ofLogs(Days.timing(), input.recordings().get(0)));
        assertThat(Days.codes(one.findings())).doesNotContain(FindingCode.SEVERAL_DAYS);
    }

    @Test
    void aReplayAnswersDayByDayAndTogether() {
        Days.Named first = new Days.Named("first.csv", swept(16, 1));
        Days.Named second = new Days.Named("second.csv", swept(24, 2));
        Replay replay = Replay.of(Days.ofLogs(Days.timing(), first, second));

        assertThat(replay.days()).hasSize(2).allMatch(day -> day.steps().size() == 3);
        Replay.OneDay last = replay.days().get(1);
        assertThat(last.together().chosen())
                .isEqualTo(replay.whole().verdict().orElseThrow().chosen());
        assertThat(last.alone().chosen())
                .isEqualTo(Session.evaluate(Days.ofLogs(Days.timing(), second))
                        .verdict()
                        .orElseThrow()
                        .chosen());
        assertThat(Replay.of(Days.ofLogs(Days.timing(), second)).days()).isEmpty();
    }

    /** Three pulls from that advance up, of an engine that is best at 28 deg. */
    private static BenchLog swept(double fromDeg, long seed) {
        BenchLog log = new BenchLog(50, seed);
        for (double deg = fromDeg; deg < fromDeg + 6; deg += 2) {
            Days.pull(log.advance(deg), 1 - 4e-4 * (deg - 28) * (deg - 28));
        }
        return log;
    }
}
