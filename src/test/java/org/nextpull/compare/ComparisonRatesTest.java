package org.nextpull.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.compare.SimulatedDay.Rates;
import org.nextpull.compare.SimulatedDay.Slow;
import org.nextpull.math.Estimate;

/** Seeded simulations of invented days: how often verdicts are wrong and how often they are found. */
class ComparisonRatesTest {
    private static final int DAYS = 600;
    private static final InterimLooks PLANNED = new InterimLooks.Planned(4);

    /** The rate that is promised and three standard errors of a count out of so many days, in percent. */
    private static double band(double percent, int days) {
        return percent + 3 * Math.sqrt(percent * (100 - percent) / days);
    }

    /**
     * Model right or wrong, a difference that is none is claimed in at most 6.5 % of days: no drift, a straight one, a bow, a step, a
     * walk, a cold start, a reference that scatters five times as much and a fifth, outliers. The whole table, with more days, is
     * {@link CompareBench}'s.
     */
    @ParameterizedTest
    @EnumSource(CompareBench.Case.class)
    void withNoDifferenceOneIsRarelyClaimed(CompareBench.Case wrong) {
        assertThat(wrong.day(0).run(DAYS, 1, PLANNED, 1).claims()).isLessThanOrEqualTo(band(6.5, DAYS));
    }

    /**
     * In blocks, whatever the drift, the 95 % interval holds within 3 points of that: in the build on fewer days, in {@link CompareBench}
     * on all.
     */
    @ParameterizedTest
    @EnumSource(CompareBench.Drifting.class)
    void inBlocksTheIntervalHolds(CompareBench.Drifting drifting) {
        for (int changes = 2; changes <= 3; changes++) {
            double missed = drifting.day(changes, 4, 0)
                    .run(DAYS, 1, PLANNED, 21 + changes)
                    .claims();
            assertThat(missed).as(changes + " change-overs").isBetween(1.0, band(6, DAYS));
        }
        double missed =
                drifting.day(3, 4, 0).afterSweeps().run(DAYS, 1, PLANNED, 24).claims();
        assertThat(missed).as("after sweeps").isBetween(1.0, band(6, DAYS));
    }

    /** Where each label was swept before, what its sweep tells of the scatter finds more, even where one label scatters far more. */
    @Test
    void sweepsTellTheScatter() {
        SimulatedDay day = CompareBench.Drifting.BOWED.day(3, 4, 1);
        double alone = day.run(DAYS, 1, PLANNED, 25).claims();
        assertThat(day.afterSweeps().run(DAYS, 1, PLANNED, 25).claims()).isGreaterThan(alone + 1);
        double unsteady = CompareBench.Case.LABEL_UNSTEADY
                .day(0)
                .afterSweeps()
                .run(DAYS, 1, PLANNED, 26)
                .claims();
        assertThat(unsteady).isLessThanOrEqualTo(band(5, DAYS));
    }

    /** Scatter 0.3 %, three change-overs: a true 1 % is found in 90 % with four runs each, 0.5 % in 70 % with six. */
    @Test
    void threeChangeOversFindWhatTheyMust() {
        Slow bow = Slow.bow(1).ofAnySize();
        double one =
                SimulatedDay.of("ABBBAAAB", 1, bow).run(DAYS, 1, PLANNED, 31).claims();
        double half = SimulatedDay.of("AABBBBAAAABB", 0.5, bow)
                .run(DAYS, 1, PLANNED, 32)
                .claims();
        assertThat(one).isGreaterThanOrEqualTo(90);
        assertThat(half).isGreaterThanOrEqualTo(70);
    }

    /** Scatter 0.3 %, four pulls each: a true 1 % is found in 95 %, none is called none in 88 %, and 1 % is seldom called none. */
    @Test
    void fourPullsEachFindOnePercentAndNone() {
        Slow slow = Slow.straight(-0.3);
        Rates different = SimulatedDay.of("ABBAABBA", 1, slow).run(DAYS, 1, PLANNED, 41);
        Rates equal = SimulatedDay.of("ABBAABBA", 0, slow).run(DAYS, 1, PLANNED, 42);
        assertThat(different.claims()).isGreaterThanOrEqualTo(95 - 3 * Math.sqrt(95 * 5.0 / DAYS));
        assertThat(equal.same()).isGreaterThanOrEqualTo(88);
        // a true difference as large as the worth is not the same
        assertThat(different.same()).isLessThanOrEqualTo(band(5, DAYS));
    }

    /** A bow of the day costs an order with two change-overs more than one with three, and turns next to nothing. */
    @Test
    void blocksAreHonestlyWide() {
        Rates turns = SimulatedDay.of("ABBAABBA", 0, Slow.NONE).run(500, 1, PLANNED, 51);
        Rates three = SimulatedDay.of("ABBBAAAB", 0, Slow.NONE).run(500, 1, PLANNED, 52);
        Rates two = SimulatedDay.of("AABBBBAA", 0, Slow.NONE).run(500, 1, PLANNED, 53);
        assertThat(three.halfWidth() / turns.halfWidth()).isBetween(0.95, 1.15);
        assertThat(two.halfWidth() / turns.halfWidth()).isBetween(1.4, 1.9);
    }

    /** What a plan foretells is what comes out, within 3 points: the plan and the comparison are one arithmetic. Drift is left out of it. */
    @ParameterizedTest
    @CsvSource({"ABBAABBA, 1", "ABBAABBAABBAABBA, 0.5", "ABBBAAAB, 1", "AABBBBAAAABB, 0.5"})
    void aPlanForetellsItsPower(String order, double difference) {
        double foretold = PullPlan.of(
                        LabelScatters.of(0.3), new PullPlan.Wish(difference, 0.8), List.of(order.split("")))
                .power();
        assertThat(SimulatedDay.of(order, difference, Slow.NONE)
                        .run(DAYS, 1, PLANNED, 61)
                        .claims())
                .isCloseTo(100 * foretold, within(3 + 300 * Math.sqrt(foretold * (1 - foretold) / DAYS)));
    }

    /**
     * All looks of a day together make no more false claims than one: with planned pulls and a look after every block, open with looks
     * at "cannot tell, more pulls", and with a look after each block planned so.
     */
    @ParameterizedTest
    @ValueSource(strings = {"straight", "bow"})
    void lookingAgainDoesNotRaiseFalseClaims(String drift) {
        Slow slow = drift.equals("bow") ? Slow.bow(1) : Slow.straight(-1);
        double most = band(6.5, DAYS);
        assertThat(claimedAtAnyLook(slow, 4, 16, look -> new InterimLooks.Planned(16)))
                .isLessThanOrEqualTo(most);
        assertThat(claimedAtAnyLook(slow, 8, 24, InterimLooks.Open::new)).isLessThanOrEqualTo(most);
        assertThat(claimedAtAnyLook(slow, 4, 24, look -> new InterimLooks.EachBlock()))
                .isLessThanOrEqualTo(most);
        assertThat(claimedAtAnyLook(
                        slow, 8, 16, look -> look == 0 ? new InterimLooks.Open(0) : new InterimLooks.Planned(16, 1)))
                .isLessThanOrEqualTo(most);
    }

    /** The remedy works: looking after every block at the plain 5 % claims a difference far more often where there is none. */
    @Test
    void plainLooksWouldClaimTooOften() {
        assertThat(claimedAtAnyLook(Slow.straight(-1), 8, 24, look -> new InterimLooks.Planned(4)))
                .isGreaterThan(band(8, DAYS));
    }

    /** The short way that the simulations take comes to the verdict that the comparison gives. */
    @Test
    void theSimulationsTakeTheVerdictOfTheComparison() {
        SplittableRandom random = new SplittableRandom(81);
        for (int day = 0; day < 20; day++) {
            List<ComparedPull> pulls =
                    SimulatedDay.of("ABBAABBA", 0.5, Slow.straight(-1)).pulls(random);
            Comparison comparison = LabelComparison.of(pulls, new ComparisonRequest("A", 1e-6, PLANNED, 1))
                    .value()
                    .orElseThrow()
                    .comparisons()
                    .get(0);
            Estimate difference = SimulatedDay.difference(pulls);
            assertThat(comparison.difference().percent()).isCloseTo(difference.value(), within(1e-9));
            // of a difference that is worth anything at all none is said to be the same
            assertThat(comparison.verdict() != Comparison.Verdict.CANNOT_TELL)
                    .isEqualTo(SimulatedDay.isClaimed(pulls, difference, PLANNED));
        }
    }

    private static double claimedAtAnyLook(Slow slow, int first, int last, IntFunction<InterimLooks> looks) {
        SplittableRandom random = new SplittableRandom(61);
        SimulatedDay days = SimulatedDay.of("ABBAABBAABBAABBAABBAABBA".substring(0, last), 0, slow);
        int claimed = 0;
        for (int day = 0; day < DAYS; day++) {
            List<ComparedPull> pulls = days.pulls(random);
            for (int done = first; done <= last; done += 4) {
                List<ComparedPull> soFar = pulls.subList(0, done);
                if (SimulatedDay.isClaimed(soFar, SimulatedDay.difference(soFar), looks.apply((done - first) / 4))) {
                    claimed++;
                    break;
                }
            }
        }
        return 100.0 * claimed / DAYS;
    }
}
