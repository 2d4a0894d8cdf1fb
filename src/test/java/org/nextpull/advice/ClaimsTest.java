package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.nextpull.advice.SimulatedDay.Truth;
import org.nextpull.channel.EngineSetting;

/** Nothing is claimed of a factor that was not swept, of a peak that is not bracketed, or of a setting that was not run again. */
class ClaimsTest {
    @Test
    void oneCleanPullIsTheOnlyOneAndProvesNothing() {
        Chosen chosen = SimulatedDay.judge(
                        Pulls.bothFactors(), new Pulls().clean(20, 0.84, 190).list())
                .chosen()
                .orElseThrow();

        assertThat(chosen.by()).isEqualTo(ChosenBy.HIGHEST_TRIED);
        assertThat(chosen.proof().standing()).isEqualTo(Chosen.Standing.ONLY_ONE);
        assertThat(chosen.proof().bracketed()).isEmpty();
    }

    @Test
    void aPlanWithoutAMixtureProvesNoMixtureThoughOneWasMeasured() {
        SimulatedDay day = new SimulatedDay(Pulls.timingOnly(), new Truth(27, 0.87, 99, 0.1, true), 1).run();
        Chosen chosen = day.last().leave().orElseThrow();

        assertThat(chosen.proof().bracketed()).doesNotContain(Factor.MIXTURE);
        assertThat(chosen.proof().open()).doesNotContain(Factor.MIXTURE);
        assertThat(chosen.proof().standing()).isEqualTo(Chosen.Standing.PROVEN);
    }

    /** The handbook: clean settings lie on both sides of the peak, and reach with 95 % to what is near enough to it. Here 86 %. */
    @Test
    void aPeakThatMayLieBeyondTheMostAdvancedSettingIsNotBracketed() {
        SweepAnswer answer = SimulatedDay.judge(
                        Pulls.timingOnly(),
                        new Pulls()
                                .clean(20, 0.87, 196)
                                .clean(22, 0.87, 198)
                                .clean(24, 0.87, 199.2)
                                .clean(26, 0.87, 199.2)
                                .clean(26, 0.87, 199.2)
                                .list())
                .timing()
                .orElseThrow();

        assertThat(answer.bracketed()).isFalse();
        assertThat(answer.optimum()).isEmpty();
    }

    @Test
    void whereKnockEndsTheClimbThereIsNoOptimumAndNoInterval() {
        SimulatedDay day = new SimulatedDay(Pulls.timingOnly(), new Truth(34, 0.87, 25, 0.1, true), 3).run();
        SweepAnswer answer =
                SimulatedDay.judge(Pulls.timingOnly(), day.pulls()).timing().orElseThrow();

        assertThat(answer.bracketed()).isFalse();
        assertThat(answer.optimum()).isEmpty();
        assertThat(answer.capped().orElseThrow().by()).isEqualTo(ChosenBy.KNOCK_LIMIT);
        assertThat(answer.capped().orElseThrow().best())
                .isLessThan(answer.limit().orElseThrow());
    }

    @Test
    void aSettingThatWasNotRunBeforeIsNotCalledARepeat() {
        SimulatedDay day = new SimulatedDay(Pulls.bothFactors(), Truth.usual(), 4).run();
        for (int pull = 0; pull < day.pulls().size(); pull++) {
            Advice advice = day.said().get(pull);
            if (advice.code() == AdviceCode.CONFIRM) {
                EngineSetting setting = advice.setting().orElseThrow();
                boolean run = day.pulls().subList(0, pull).stream()
                        .map(one -> one.setting())
                        .anyMatch(one -> Math.abs(one.advance().orElseThrow().deg()
                                                - setting.advance()
                                                        .orElseThrow()
                                                        .deg())
                                        < 0.31
                                && Math.abs(one.lambda().orElseThrow().value()
                                                - setting.lambda().orElseThrow().value())
                                        < 0.0031);
                assertThat(advice.action()).isEqualTo(run ? Action.REPEAT : Action.PULL);
            }
        }
    }
}
