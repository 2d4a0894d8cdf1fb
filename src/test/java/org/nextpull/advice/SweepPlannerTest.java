package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.nextpull.fit.SweepPriors;
import org.nextpull.unit.Span;

class SweepPlannerTest {
    private static final double RESOLUTION = 0.5;

    private static TriedSetting pull(int number, double setting, double response) {
        return new TriedSetting(setting, OptionalDouble.of(response), true, OptionalDouble.empty(), number, number - 1);
    }

    private static TriedSetting knocked(int number, double setting) {
        return new TriedSetting(setting, OptionalDouble.empty(), false, OptionalDouble.empty(), number, number - 1);
    }

    private static SweepDecision decide(List<TriedSetting> tried, Span allowed, OptionalDouble ceiling) {
        return decide(tried, allowed, ceiling, PlannerRules.timing());
    }

    private static SweepDecision decide(
            List<TriedSetting> tried, Span allowed, OptionalDouble ceiling, PlannerRules rules) {
        SweepRoom room =
                new SweepRoom(allowed, tried.get(0).setting(), new SweepRoom.Resolution(RESOLUTION), 4, ceiling);
        return SweepPlanner.decide(new SweepQuestion(
                tried, SweepPriors.timing(tried.get(0).setting() + 8), room, rules, Optional.empty()));
    }

    private static double torque(double setting) {
        double x = setting - 28.5;
        return 200 * (1 - 6e-4 * x * x);
    }

    private static List<TriedSetting> quiet(double... settings) {
        List<TriedSetting> tried = new ArrayList<>();
        for (double setting : settings) {
            tried.add(pull(tried.size() + 1, setting, torque(setting)));
        }
        return tried;
    }

    @Test
    void afterTheFirstPullItClimbsByNoMoreThanTheStep() {
        SweepDecision decision = decide(quiet(20), Span.of(10, 40), OptionalDouble.empty());
        assertThat(decision)
                .isInstanceOfSatisfying(
                        SweepDecision.Pull.class,
                        pull -> assertThat(pull.candidate().setting())
                                .isGreaterThan(20)
                                .isLessThanOrEqualTo(24));
    }

    @Test
    void aWellBracketedSweepIsSettledNearItsPeak() {
        SweepDecision decision = decide(quiet(20, 24, 28, 32, 30, 26, 29), Span.of(10, 40), OptionalDouble.empty());
        assertThat(decision).isInstanceOfSatisfying(SweepDecision.Stop.class, stop -> {
            assertThat(stop.why()).isEqualTo(SweepDecision.Why.SETTLED);
            assertThat(stop.numbers().leave().orElseThrow().setting()).isBetween(26.0, 29.0);
            assertThat(stop.numbers().peak().contains(28.5)).isTrue();
        });
    }

    @Test
    void aPlanLimitBelowThePeakIsNamed() {
        SweepDecision decision = decide(quiet(14, 17, 20, 20, 20), Span.of(10, 20), OptionalDouble.empty());
        assertThat(decision).isInstanceOfSatisfying(SweepDecision.Stop.class, stop -> {
            assertThat(stop.why()).isEqualTo(SweepDecision.Why.PLAN_LIMIT);
            assertThat(stop.numbers().leave().orElseThrow().setting()).isLessThanOrEqualTo(20);
        });
    }

    @Test
    void nothingIsProposedAtOrAboveAKnock() {
        List<TriedSetting> tried = quiet(18, 22);
        tried.add(knocked(3, 26));
        SweepDecision decision = decide(tried, Span.of(10, 40), OptionalDouble.of(24));
        assertThat(decision.numbers().leave().orElseThrow().setting()).isLessThanOrEqualTo(22);
        if (decision instanceof SweepDecision.Pull pull) {
            assertThat(pull.candidate().setting()).isLessThanOrEqualTo(24);
        }
        tried.add(pull(4, 24, torque(24)));
        tried.add(pull(5, 24, torque(24)));
        assertThat(decide(tried, Span.of(10, 40), OptionalDouble.of(24)))
                .isInstanceOfSatisfying(
                        SweepDecision.Stop.class,
                        stop -> assertThat(stop.why()).isEqualTo(SweepDecision.Why.KNOCK_LIMITED));
    }

    /** A flag below an earlier clean setting: the lower is kept. */
    @Test
    void aCleanSettingAboveAKnockIsNotBelieved() {
        List<TriedSetting> tried = quiet(18, 22, 26);
        tried.add(knocked(4, 24));
        SweepDecision decision = decide(tried, Span.of(10, 40), OptionalDouble.of(23.5));
        assertThat(decision.numbers().leave().orElseThrow().setting()).isLessThanOrEqualTo(22);
    }

    @Test
    void aCeilingBelowEverythingLeavesNoRoom() {
        SweepDecision decision = decide(quiet(20), Span.of(18, 40), OptionalDouble.of(12.3));
        assertThat(decision)
                .isInstanceOfSatisfying(
                        SweepDecision.Stop.class, stop -> assertThat(stop.why()).isEqualTo(SweepDecision.Why.NO_ROOM));
    }

    @Test
    void aPlanWithOneSettingAndAStepAboveTheRoomAreNoTrouble() {
        assertThat(decide(quiet(20), Span.of(20, 20), OptionalDouble.empty())).isNotNull();
        assertThat(decide(quiet(20, 20.2), Span.of(20, 20.3), OptionalDouble.empty()))
                .isNotNull();
    }

    /** One low reading at 30 makes the peak look settled; without it the torque may still rise. */
    @Test
    void oneReadingMayNotCarryTheVerdict() {
        List<TriedSetting> tried = List.of(
                pull(1, 20, 190.0), pull(2, 24, 196.2), pull(3, 27, 199.2), pull(4, 28, 199.6), pull(5, 31, 196.5));
        SweepDecision decision = decide(tried, Span.of(10, 40), OptionalDouble.empty());
        assertThat(decision).isInstanceOf(SweepDecision.Pull.class);
    }

    @Test
    void whereKnockIsOnlyHeardOrNotASteepClimbGoesInSmallSteps() {
        List<TriedSetting> tried = quiet(14, 15.5);
        double graded = climbed(decide(tried, Span.of(10, 40), OptionalDouble.empty(), PlannerRules.timing()));
        double flagged = climbed(decide(tried, Span.of(10, 40), OptionalDouble.empty(), PlannerRules.flaggedTiming()));
        assertThat(graded).isGreaterThan(18);
        assertThat(flagged).isGreaterThan(15.5).isLessThanOrEqualTo(17);
    }

    /** Torque still rises by more than 1 % a degree at 18 deg. */
    @Test
    void knockThatWasHeardEndsTheClimb() {
        List<TriedSetting> tried = quiet(14, 18);
        tried.add(knocked(3, 22));
        SweepDecision again = decide(tried, Span.of(10, 40), OptionalDouble.of(21), PlannerRules.timing());
        SweepDecision ended = decide(tried, Span.of(10, 40), OptionalDouble.of(21), PlannerRules.flaggedTiming());
        assertThat(climbed(again)).isGreaterThan(18);
        assertThat(climbed(ended)).isLessThanOrEqualTo(18);
        assertThat(ended.numbers().leave().orElseThrow().setting()).isEqualTo(18);
    }

    private static double climbed(SweepDecision decision) {
        return decision instanceof SweepDecision.Pull pull ? pull.candidate().setting() : 0;
    }

    /** Readings off by 2 % each way: the pulls that are left cannot tell where the top is. */
    @Test
    void aSweepThatCannotSettleAnyMoreIsScatterLimited() {
        List<TriedSetting> tried = new ArrayList<>();
        double[] settings = {20, 24, 28, 31, 26, 30, 24, 31, 20, 30, 31, 24, 28, 20, 26};
        for (int i = 0; i < settings.length; i++) {
            double off = (i % 3 - 1) * 0.02;
            tried.add(pull(i + 1, settings[i], 200 * (1 + off)));
        }
        assertThat(decide(tried, Span.of(10, 40), OptionalDouble.empty()))
                .isInstanceOfSatisfying(
                        SweepDecision.Stop.class,
                        stop -> assertThat(stop.why()).isEqualTo(SweepDecision.Why.SCATTER_LIMITED));
    }
}
