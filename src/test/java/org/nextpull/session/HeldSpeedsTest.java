package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.BenchLog;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.RowFigure;

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

    private static Stream<RowFigure> rows(MeasuredPull pull) {
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
        assertThat(pulls.stream().flatMap(HeldSpeedsTest::rows).map(RowFigure::rpm))
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
}
