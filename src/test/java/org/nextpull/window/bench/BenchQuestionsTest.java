package org.nextpull.window.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.DayByPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.SampleDays;
import org.nextpull.window.page.Question;

/** What the operator answers becomes an act; what makes no sense is said, and nothing is done. */
class BenchQuestionsTest {
    private final List<OperatorAction> told = new ArrayList<>();
    private final BenchQuestions questions = new BenchQuestions(told::add, new Shown(UnitSystem.METRIC));

    private static Optional<String> answer(Question question, String... texts) {
        assertThat(texts).hasSameSizeAs(question.fields());
        return question.take().apply(List.of(texts));
    }

    @Test
    void strikingNeedsAReason() {
        assertThat(answer(questions.strike(3), " ")).isPresent();
        assertThat(told).isEmpty();
        assertThat(answer(questions.strike(3), " throttle slipped ")).isEmpty();
        assertThat(told).containsExactly(new OperatorAction.Strike(3, "throttle slipped"));
    }

    @Test
    void liftingNeedsAReason() {
        assertThat(answer(questions.lift(7), "")).isPresent();
        assertThat(answer(questions.lift(7), "loose bracket rattled")).isEmpty();
        assertThat(told).containsExactly(new OperatorAction.Lift(7, "loose bracket rattled"));
    }

    @Test
    void restoringIsAYes() {
        assertThat(answer(questions.restore(3))).isEmpty();
        assertThat(told).containsExactly(new OperatorAction.Restore(3));
    }

    @Test
    void knockIsYesOrNoAndNothingElse() {
        assertThat(answer(questions.knock(4), "maybe")).isPresent();
        assertThat(answer(questions.knock(4), "")).isPresent();
        assertThat(told).isEmpty();
        answer(questions.knock(4), "Yes");
        answer(questions.knock(5), "n");
        assertThat(told)
                .containsExactly(
                        new OperatorAction.Correct(4, AskedSetting.none().withKnock(KnockMark.HEARD)),
                        new OperatorAction.Correct(5, AskedSetting.none().withKnock(KnockMark.NONE)));
    }

    @Test
    void aCorrectionTakesPointAndCommaAndNamesTheFieldThatIsWrong() {
        MeasuredPull pull = DayByPull.of(SampleDays.input("hillclimb-e10-timing"))
                .whole()
                .pulls()
                .get(0);
        Question question = questions.correct(pull);
        assertThat(question.fields().get(0).text()).isEqualTo("20.0");
        assertThat(answer(question, "two", "0.88", "", "").orElse("")).contains("Advance", "two");
        assertThat(answer(question, "21", "lean", "", "").orElse("")).contains("Lambda", "lean");
        assertThat(answer(question, "21", "-1", "", "")).isPresent();
        assertThat(told).isEmpty();
        assertThat(answer(question, "21,5", "0.880", "", "e10")).isEmpty();
        assertThat(told)
                .containsExactly(new OperatorAction.Correct(
                        1,
                        AskedSetting.none()
                                .withValues(
                                        Optional.of(Advance.ofDeg(21.5)),
                                        Optional.empty(),
                                        Optional.of(Lambda.of(0.88)))
                                .withConfiguration(Optional.empty(), Optional.of("e10"))));
    }

    @Test
    void whatIsSetIsSaidBeforeThePull() {
        Question question = questions.set(6, Optional.of("28.0"), Optional.empty(), false);
        assertThat(answer(question, "27.5", "")).isEmpty();
        assertThat(told)
                .containsExactly(new OperatorAction.Setting(
                        6,
                        AskedSetting.none()
                                .withValues(Optional.of(Advance.ofDeg(27.5)), Optional.empty(), Optional.empty()),
                        false));
        assertThat(answer(question, "27.5", "0")).isPresent();
    }

    @Test
    void aNoteAndWhatIsFittedNeedWords() {
        assertThat(answer(questions.note(OptionalInt.of(2)), "")).isPresent();
        assertThat(answer(questions.fitted(), "", " ")).isPresent();
        answer(questions.note(OptionalInt.empty()), "rain");
        answer(questions.fitted(), "short pipe", "");
        assertThat(told)
                .containsExactly(
                        new OperatorAction.Note(OptionalInt.empty(), "rain"),
                        new OperatorAction.Next(Optional.of("short pipe"), Optional.empty()));
    }

    @Test
    void aLimitThatNoPlanHasIsNamed() {
        SweepPlan plan = SampleDays.input("hillclimb-e10-timing").plan();
        assertThat(answer(questions.limit(plan), "exhaust_cc", "850").orElse(""))
                .contains("exhaust_c");
        assertThat(answer(questions.limit(plan), "exhaust_c", "")).isPresent();
        assertThat(told).isEmpty();
        assertThat(answer(questions.limit(plan), "exhaust_c", "850")).isEmpty();
        assertThat(told).containsExactly(new OperatorAction.ChangeLimit("exhaust_c", 850));
    }
}
