package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.SimulatedDay.Truth;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;

/** Reasons to stop are reached by days that call for them, and each says what to leave. */
class StopReasonsTest {
    private static Advice endOf(SweepPlan plan, Truth truth, long seed) {
        Advice last = new SimulatedDay(plan, truth, seed).run().last();
        assertThat(last.action()).isEqualTo(Action.STOP);
        assertThat(last.setting()).isEmpty();
        assertThat(last.leave()).isPresent();
        return last;
    }

    private static SweepPlan timing(String more) {
        return Pulls.plan("""
                [timing]
                start_deg = 20
                least_deg = 12
                most_deg = 36
                """ + more);
    }

    @Test
    void aSteadyEngineIsSettled() {
        Advice end = endOf(Pulls.timingOnly(), new Truth(27, 0.87, 99, 0.1, true), 1);

        assertThat(end.code()).isEqualTo(AdviceCode.SETTLED);
        assertThat(end.leave().orElseThrow().by()).isEqualTo(ChosenBy.PEAK);
    }

    @Test
    void knockBelowThePeakIsKnockLimited() {
        assertThat(endOf(Pulls.timingOnly(), new Truth(31, 0.87, 25, 0.1, true), 3)
                        .code())
                .isEqualTo(AdviceCode.KNOCK_LIMITED);
    }

    /** Torque that fell a little before knock came may have its best below it: one more pull, no further than knock permits. */
    @Test
    void aPullThatGoesAsFarAsKnockPermitsSaysThatItDoes() {
        Advice next = SimulatedDay.judge(
                        Pulls.timingOnly(),
                        new Pulls().clean(20, 0.87, 180).knocked(22, 0.87, 177).list())
                .advice();

        assertThat(next.reason())
                .isInstanceOfSatisfying(
                        Reason.Searching.class,
                        search -> assertThat(search.purpose()).isEqualTo(PlannerDecision.Purpose.UP_TO_KNOCK));
        assertThat(next.setting().orElseThrow().advance().orElseThrow().deg())
                .as("half a step below what the margin forbids")
                .isEqualTo(19.5);
    }

    @Test
    void aPeakBeyondThePlanIsPlanLimited() {
        assertThat(endOf(Pulls.timingOnly(), new Truth(46, 0.87, 99, 0.1, true), 4)
                        .code())
                .isEqualTo(AdviceCode.PLAN_LIMIT);
    }

    /** With 1.6 % from pull to pull no pull that is left would narrow the interval enough, unless luck has the first ones agree. */
    @Test
    void mostDaysOfHighScatterAreScatterLimitedBeforeTheirPullsAreUsedUp() {
        List<Advice> ends = IntStream.rangeClosed(1, 10)
                .mapToObj(seed -> endOf(Pulls.timingOnly(), new Truth(27, 0.87, 99, 1.6, true), seed))
                .toList();

        assertThat(ends)
                .filteredOn(end -> end.code() == AdviceCode.SCATTER_LIMITED)
                .hasSizeGreaterThan(5);
        assertThat(ends).noneMatch(end -> end.code() == AdviceCode.BUDGET);
    }

    @Test
    void aBudgetOfFivePullsEndsTheDayAfterFive() {
        SimulatedDay day =
                new SimulatedDay(timing("[goal]\nmax_pulls = 5\n"), new Truth(31, 0.87, 99, 0.4, true), 5).run();

        assertThat(day.last().code()).isEqualTo(AdviceCode.BUDGET);
        assertThat(day.pulls()).hasSize(5);
    }

    @Test
    void aHotExhaustDoesNotOverdrawTheBudget() {
        SweepPlan plan = Pulls.plan("""
                [timing]
                start_deg = 20
                least_deg = 12
                most_deg = 36
                [mixture]
                start_lambda = 0.84
                richest_lambda = 0.78
                leanest_lambda = 0.94
                [goal]
                max_pulls = 2
                """);
        Pulls day = new Pulls().clean(20, 0.84, 190).limited(20, 0.84, Limit.EXHAUST, 1200, 1150);

        assertThat(SimulatedDay.judge(plan, day.list()).advice().code()).isEqualTo(AdviceCode.BUDGET);
    }

    @Test
    void lowOilPressureIsALimitMet() {
        Pulls day = new Pulls().clean(20, 0.84, 190).limited(20, 0.84, Limit.OIL_PRESSURE, 90e3, 200e3);
        Advice end = SimulatedDay.judge(Pulls.timingOnly(), day.list()).advice();

        assertThat(end.code()).isEqualTo(AdviceCode.LIMIT_MET);
        assertThat(end.leave()).isPresent();
    }

    @Test
    void aMixtureThatALeanLimitCapsEndsAtThatLimitAndNotAtKnock() {
        SweepPlan plan = Pulls.plan("""
                [mixture]
                start_lambda = 0.84
                richest_lambda = 0.78
                leanest_lambda = 0.94
                """);
        Pulls day = new Pulls();
        Advice advice = SimulatedDay.judge(plan, day.list()).advice();
        for (int count = 0; count < 25 && advice.action() != Action.STOP; count++) {
            double lambda = advice.setting()
                    .flatMap(EngineSetting::lambda)
                    .orElseThrow()
                    .value();
            if (lambda >= 0.86) {
                day.limited(25, lambda, Limit.LEAN, lambda, 0.86);
            } else {
                double z = 100 * (lambda - 0.92);
                day.clean(25, lambda, 200 * (1 - 2e-4 * z * z));
            }
            advice = SimulatedDay.judge(plan, day.list()).advice();
        }

        assertThat(advice.code()).isEqualTo(AdviceCode.LIMIT_MET);
        assertThat(advice.leave().orElseThrow().setting().lambda().orElseThrow().value())
                .isLessThan(0.86);
    }

    @Test
    @DisplayName("Rule 7: without a pull that ran the rows nothing claims that they are proven")
    void rowsAreNotProvenUnlessTheyWereRun() {
        SimulatedDay day = new SimulatedDay(Pulls.timingOnly(), new Truth(27, 0.87, 99, 0.1, true), 1).run();
        SweepAnswer answer = SimulatedDay.judge(Pulls.timingOnly(), day.pulls(), Set.of(), PresentConditions.unknown())
                .timing()
                .orElseThrow();

        assertThat(answer.rowsProven()).isFalse();
        assertThat(answer.rows())
                .as("rows need torque by speed, which these pulls have not")
                .isEmpty();
    }
}
