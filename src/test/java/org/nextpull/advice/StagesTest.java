package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.advice.SimulatedDay.Truth;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** Whole days against an engine of known truth. */
class StagesTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aDayGoesThroughItsStagesInOrderAndEndsNearTheTruth(long seed) {
        SimulatedDay day = new SimulatedDay(Pulls.bothFactors(), Truth.usual(), seed).run();
        List<AdviceCode> codes = day.said().stream().map(Advice::code).toList();

        assertThat(codes.subList(0, 2)).containsExactly(AdviceCode.BASELINE, AdviceCode.REPEAT_BASELINE);
        // a timing pull at the backed-off advance serves as the start of the bracket, which is then not run again
        assertThat(codes.indexOf(AdviceCode.RICH_STEP)).isGreaterThan(3);
        assertThat(codes.indexOf(AdviceCode.START_MIXTURE)).isLessThan(codes.indexOf(AdviceCode.RICH_STEP));
        assertThat(codes.lastIndexOf(AdviceCode.CONFIRM)).isEqualTo(codes.size() - 2);
        assertThat(day.last().code()).isEqualTo(AdviceCode.SETTLED);
        Proposal left = day.last().leave().orElseThrow().setting();
        double loss = 1
                - Truth.usual()
                                .torque(
                                        left.advance().orElseThrow().deg(),
                                        left.lambda().orElseThrow().value())
                        / 200;
        assertThat(loss).as("share of torque left by %s", left).isLessThan(0.005);
        assertThat(day.pulls().size()).isLessThanOrEqualTo(25);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void knockBelowThePeakEndsTheDayBelowIt(long seed) {
        Truth truth = new Truth(30, 0.87, 25, 0.2, true);
        SimulatedDay day = new SimulatedDay(Pulls.timingOnly(), truth, seed).run();

        Chosen left = day.last().leave().orElseThrow();
        assertThat(day.last().code()).isEqualTo(AdviceCode.KNOCK_LIMITED);
        assertThat(left.by()).isEqualTo(ChosenBy.KNOCK_LIMIT);
        assertThat(left.setting().advance().orElseThrow().deg()).isLessThan(25);
    }

    @Test
    void aPeakBeyondThePlanEndsAtThePlansLimitAndSaysSo() {
        Truth truth = new Truth(45, 0.87, 99, 0.2, true);
        SimulatedDay day = new SimulatedDay(Pulls.timingOnly(), truth, 21).run();

        assertThat(day.last().code()).isEqualTo(AdviceCode.PLAN_LIMIT);
        assertThat(day.last().leave().orElseThrow().by()).isEqualTo(ChosenBy.PLAN_LIMIT);
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35, 36, 37, 38, 39, 40})
    void noProposalLeavesThePlanOrStepsTooFar(long seed) {
        Truth truth = new Truth(24 + seed % 7, 0.85 + 0.01 * (seed % 5), seed % 3 == 0 ? 26 : 99, 0.4, seed % 2 == 0);
        SimulatedDay day = new SimulatedDay(Pulls.bothFactors(), truth, seed).run();

        List<MeasuredPull> pulls = day.pulls();
        for (int index = 0; index < pulls.size(); index++) {
            double advance =
                    pulls.get(index).setting().advance().map(Advance::deg).orElseThrow();
            double lambda =
                    pulls.get(index).setting().lambda().map(Lambda::value).orElseThrow();
            assertThat(advance).isBetween(12.0, 36.0);
            assertThat(lambda).isBetween(0.78, 0.94);
            double mostClean = pulls.subList(0, index).stream()
                    .filter(MeasuredPull::isClean)
                    .mapToDouble(pull -> pull.setting().advance().orElseThrow().deg())
                    .max()
                    .orElse(20);
            assertThat(advance).as("pull %d of seed %d", index + 1, seed).isLessThanOrEqualTo(mostClean + 2 + 1e-9);
        }
    }
}
