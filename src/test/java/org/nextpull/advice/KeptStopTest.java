package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.SimulatedDay.Truth;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;

/** A stop that was said stands while settings are run again that were run before it; what opens the day again is named. */
class KeptStopTest {
    private static final SweepPlan PLAN = Pulls.timingOnly();
    private static final double KNOCK_DEG = 26;

    private static SimulatedDay knockDay() {
        SimulatedDay day = new SimulatedDay(PLAN, new Truth(31, 0.87, KNOCK_DEG, 0.1, true), 3).run();
        assertThat(day.last().code()).isEqualTo(AdviceCode.KNOCK_LIMITED);
        return day;
    }

    private static Pulls after(SimulatedDay day) {
        return new Pulls().addAll(day.pulls());
    }

    private static Advice said(Pulls pulls) {
        return SimulatedDay.judge(PLAN, pulls.list()).advice();
    }

    private static double left(Advice advice) {
        return advice.leave()
                .flatMap(chosen -> chosen.setting().advance())
                .orElseThrow()
                .deg();
    }

    @Test
    void pullsAtSettingsThatWereRunLeaveTheStopAsItWas() {
        SimulatedDay day = knockDay();
        int stopped = day.pulls().size();
        Pulls more = after(day);
        for (MeasuredPull pull : List.of(day.pulls().get(0), day.pulls().get(2))) {
            more.clean(pull.setting().advance().orElseThrow().deg(), 0.87, 190);
            Advice advice = said(more);

            assertThat(advice.action()).isEqualTo(Action.STOP);
            assertThat(advice.code()).isEqualTo(AdviceCode.KNOCK_LIMITED);
            assertThat(left(advice)).isEqualTo(left(day.last()));
            EarlierStop stop = advice.earlier().orElseThrow();
            assertThat(stop.afterPull()).isEqualTo(stopped);
            assertThat(stop.pullsSince()).isEqualTo(more.count() - stopped);
            assertThat(stop.reopened()).isEmpty();
        }
    }

    @Test
    void aSettingThatWasNotRunOpensTheDayAgainAndIsNamed() {
        SimulatedDay day = knockDay();
        Pulls more = after(day).clean(15, 0.87, 180);
        EarlierStop stop = said(more).earlier().orElseThrow();

        assertThat(stop.reopened().orElseThrow().cause()).isEqualTo(EarlierStop.Cause.NEW_SETTING);
        assertThat(stop.reopened().orElseThrow().pull()).hasValue(more.count());
    }

    @Test
    void knockAtWhatWasLeftOpensTheDayAgainAndIsNamed() {
        SimulatedDay day = knockDay();
        double left = left(day.last());
        Pulls more = after(day).knocked(left, 0.87, 190);
        Advice advice = said(more);

        assertThat(advice.earlier().orElseThrow().reopened().orElseThrow().cause())
                .isEqualTo(EarlierStop.Cause.KNOCK);
        assertThat(left(advice)).isLessThanOrEqualTo(left - 2);
    }

    @Test
    void otherPartsBeginASweepOfTheirOwn() {
        Pulls more = after(knockDay()).label("other").clean(20, 0.87, 190);

        assertThat(said(more).action()).isNotEqualTo(Action.STOP);
        assertThat(said(more).earlier()).isEmpty();
    }
}
