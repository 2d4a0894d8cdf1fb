package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.nextpull.advice.AdviceCode;
import org.nextpull.alarm.Counsel;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.SourceDescription;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.session.DayByPull;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Torque;
import org.nextpull.unit.UnitSystem;

/** The next step in large print: short enough to be read from a distance, and it promises nothing. */
class NextStepTextTest {
    /** What two lines of the large sentence hold at 1280 pixels, and a little more. */
    private static final int READABLE = 150;

    private static final NextStepText LEAD = new NextStepText(new Shown(UnitSystem.METRIC));

    private static final SweepPlan PLAN =
            PlanText.read("""
            [timing]
            start_deg = 20
            least_deg = 10
            most_deg = 46
            """, "test.toml").value().orElseThrow();

    private static SessionResult day(KnockMark knock, double... advances) {
        List<ResultTable.Row> rows = new java.util.ArrayList<>();
        for (double advance : advances) {
            rows.add(new ResultTable.Row(
                    rows.size() + 2L,
                    OptionalInt.empty(),
                    Optional.of(Advance.ofDeg(advance)),
                    Optional.empty(),
                    Optional.of(Torque.ofNewtonMetres(200 - 0.1 * Math.pow(advance - 27, 2) + 0.1 * (rows.size() % 2))),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    knock,
                    true));
        }
        ResultTable table = new ResultTable(
                new SourceDescription("table.csv", "UTF-8", ",", '.', List.of()),
                rows,
                new BlockReader.RowCount(rows.size(), 0));
        DayByPull day = DayByPull.of(SessionInput.of(PLAN, List.of(), List.of(table)));
        return day.after(advances.length);
    }

    @ParameterizedTest
    @EnumSource(AdviceCode.class)
    void everyReasonIsShortAndPromisesNothing(AdviceCode code) {
        for (UnitSystem units : UnitSystem.values()) {
            String brief = new AdviceText(new Shown(units)).brief(AdviceTextTest.advice(code));
            assertThat(brief).endsWith(".").doesNotContain("..", "null", "Optional", "NaN");
            assertThat(brief.length()).isBetween(20, READABLE);
            assertThat(ForbiddenWords.in(brief)).isEmpty();
        }
    }

    @Test
    void beforeTheFirstPullItIsTheStartOfThePlan() {
        NextStep lead = LEAD.of(day(KnockMark.NONE));
        assertThat(lead.kind()).isEqualTo(NextStep.Kind.PULL);
        assertThat(lead.figures()).containsExactly(new NextStep.Figure("20.0", "deg", "spark advance", ""));
        assertThat(lead.about()).isEqualTo("for pull 1");
        assertThat(lead.spoken()).startsWith("Set, spark advance 20.0 deg. Baseline: the plan's start setting.");
    }

    @Test
    void aStepSaysWhatChangesAgainstTheLastPull() {
        NextStep lead = LEAD.of(day(KnockMark.NONE, 20, 20, 22));
        assertThat(lead.figures().get(0).number()).isEqualTo("24.0");
        assertThat(lead.figures().get(0).change()).isEqualTo("+2.0");
        assertThat(lead.about()).isEqualTo("for pull 4");
        assertThat(lead.listen()).isEmpty();
        NextStep first = LEAD.of(day(KnockMark.NONE, 20));
        assertThat(first.kind()).isEqualTo(NextStep.Kind.PULL);
        assertThat(first.figures().get(0).change()).isEqualTo("+2.0");
    }

    @Test
    void whereKnockIsNotMeasuredItAsksToListen() {
        assertThat(LEAD.of(day(KnockMark.NOT_MEASURED, 20, 20, 22)).listen().orElse(""))
                .contains("not measured", "listen", "mark");
    }

    @Test
    void aStopShowsWhatToLeave() {
        NextStep lead = LEAD.of(day(KnockMark.NONE, 20, 20, 22, 24, 26, 28, 30, 26, 25, 25, 25, 25));
        assertThat(lead.kind()).as(lead.spoken()).isEqualTo(NextStep.Kind.DONE);
        assertThat(lead.word()).isEqualTo("Done");
        assertThat(lead.figures()).hasSize(1);
        assertThat(lead.about()).isEqualTo("final setting");
        assertThat(lead.because()).startsWith("That is 1.0 deg above MBT. ");
    }

    @Test
    void withoutASweepThereIsNothingToSet() {
        SweepPlan none = PlanText.read("", "empty.toml").value().orElseThrow();
        NextStep lead = LEAD.of(
                DayByPull.of(SessionInput.of(none, List.of(), List.of())).whole());
        assertThat(lead.kind()).isEqualTo(NextStep.Kind.NOTHING);
        assertThat(lead.figures()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Counsel.class)
    void everyCounselSaysWhatComesAfterwards(Counsel counsel) {
        assertThat(AlarmText.afterwards(counsel)).endsWith(".");
        assertThat(ForbiddenWords.in(AlarmText.afterwards(counsel))).isEmpty();
    }
}
