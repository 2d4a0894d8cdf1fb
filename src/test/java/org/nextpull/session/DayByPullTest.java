package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Verdict;
import org.nextpull.finding.FindingCode;
import org.nextpull.response.MeasuredPull;

/** A day pull by pull: the same as a day that ended there. */
class DayByPullTest {
    private static final List<Days.Run> RUNS = List.of(
            new Days.Run(20, 190.3),
            new Days.Run(20, 190.1),
            new Days.Run(22, 193.4),
            new Days.Run(24, 195.6),
            new Days.Run(26, 196.4),
            new Days.Run(28, 196.1));

    private static DayByPull day(List<Days.Run> runs) {
        return DayByPull.of(SessionInput.of(Days.timing(), List.of(), List.of(Days.table(runs))));
    }

    @Test
    void afterSomePullsItIsTheDayThatEndedThere() {
        DayByPull whole = day(RUNS);
        for (int pulls = 1; pulls <= RUNS.size(); pulls++) {
            SessionResult there = whole.after(pulls);
            SessionResult ended = Days.ofTable(RUNS.subList(0, pulls));
            assertThat(there.pulls()).isEqualTo(ended.pulls());
            assertThat(there.verdict()).isEqualTo(ended.verdict());
            assertThat(there.repeatability()).isEqualTo(ended.repeatability());
            assertThat(there.findings()).isEqualTo(ended.findings());
        }
    }

    @Test
    void beforeTheFirstPullItAdvisesTheStartAndMissesNothing() {
        SessionResult start = day(RUNS).after(0);
        assertThat(start.verdict().orElseThrow().advice().code()).isEqualTo(AdviceCode.BASELINE);
        assertThat(start.findings())
                .extracting(org.nextpull.finding.Finding::code)
                .doesNotContain(FindingCode.NO_PULL_TO_USE);
    }

    @Test
    void aPullThatIsStruckIsStruckInEveryLaterState() {
        DayByPull plain = day(RUNS);
        Amendments four = new Amendments(Map.of(4, "throttle slipped"), Set.of(), Map.of());
        DayByPull struck = plain.with(plain.input().withAmendments(four));
        assertThat(struck.after(3).pulls()).allMatch(pull -> pull.standing() == MeasuredPull.Status.USED);
        assertThat(struck.after(6).pulls().get(3).standing()).isEqualTo(MeasuredPull.Status.STRUCK);
        assertThat(struck.with(plain.input()).whole().verdict())
                .isEqualTo(plain.whole().verdict());
    }

    @Test
    void itsReplayEndsWhereItWasCut() {
        DayByPull whole = day(RUNS);
        List<Integer> numbers = new ArrayList<>();
        Replay replay = whole.replay(4);
        replay.steps().forEach(step -> numbers.add(step.pull().number()));
        assertThat(numbers).containsExactly(1, 2, 3, 4);
        assertThat(replay.whole().pulls()).hasSize(4);
        assertThat(replay.steps().get(3).verdict())
                .isEqualTo(whole.after(4).verdict().orElseThrow());
    }

    @Test
    void itsReplaySaysAfterEachPullWhatTheDayThatEndedThereSaysThoughAStopStands() {
        List<Days.Run> runs = new ArrayList<>(RUNS);
        for (int repeat = 0; repeat < 4; repeat++) {
            runs.add(new Days.Run(26, 196.4 + 0.1 * repeat));
            runs.add(new Days.Run(24, 195.5));
        }
        runs.add(new Days.Run(30, 194.9));
        Replay replay = day(runs).replay(runs.size());
        int stopped = replay.stoppedAfter().orElseThrow();
        assertThat(stopped).isLessThan(runs.size() - 2);
        for (int pulls = 1; pulls <= runs.size(); pulls++) {
            Verdict ended = Days.ofTable(runs.subList(0, pulls)).verdict().orElseThrow();
            Verdict said = replay.steps().get(pulls - 1).verdict();
            assertThat(said.advice()).as("pull " + pulls).isEqualTo(ended.advice());
            assertThat(said.chosen()).as("pull " + pulls).isEqualTo(ended.chosen());
        }
    }
}
