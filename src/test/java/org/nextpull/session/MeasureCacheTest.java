package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.curve.CorrectedCurve;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;

/** A day that goes on says what the same day says measured anew, and measures no pull twice. */
class MeasureCacheTest {
    private final MeasureCache once = new MeasureCache();

    private SessionInput input() throws IOException {
        SweepPlan plan = PlanText.read(Files.readString(Path.of("sweep-plans/hillclimb-e10-timing.toml")), "plan.toml")
                .value()
                .orElseThrow();
        return SessionInput.of(
                plan,
                new LogFiles(plan.log().hints())
                        .read(List.of("sample-logs/hillclimb-e10-timing.csv")).logs().stream()
                                .map(log -> log.recording())
                                .toList(),
                List.of());
    }

    private static CorrectedCurve curve(SessionResult day, int pull) {
        return day.measured().get(pull).curve().orElseThrow();
    }

    @Test
    void aStateOfTheDayMeasuresNoPullAgain() throws IOException {
        SessionInput input = input();
        List<SourcePulls> sources = Session.read(input);
        SessionResult first = Session.evaluate(input, sources, once);
        SessionResult again = Session.evaluate(input, sources, once);
        assertThat(again).isEqualTo(first).isEqualTo(Session.evaluate(input, sources));
        assertThat(first.measured()).isNotEmpty();
        for (int pull = 0; pull < first.measured().size(); pull++) {
            assertThat(curve(again, pull)).isSameAs(curve(first, pull));
        }
    }

    @Test
    void aPullOfWhichSomethingElseIsSaidIsMeasuredAnewAndNoOther() throws IOException {
        SessionInput input = input();
        List<SourcePulls> sources = Session.read(input);
        SessionResult first = Session.evaluate(input, sources, once);
        SessionInput heard = input.withAmendments(
                new Amendments(Map.of(), Set.of(), Map.of(2, AskedSetting.none().withKnock(KnockMark.HEARD))));
        SessionResult said = Session.evaluate(heard, sources, once);
        assertThat(said.pulls().get(1).knock().isHeard()).isTrue();
        assertThat(said).isEqualTo(Session.evaluate(heard, sources));
        assertThat(curve(said, 1)).isNotSameAs(curve(first, 1));
        assertThat(curve(said, 2)).isSameAs(curve(first, 2));
    }
}
