package org.nextpull.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nextpull.compare.SimulatedDay.Rates;
import org.nextpull.compare.SimulatedDay.Slow;

/** Seeded simulations of invented days: how often verdicts are wrong and how often they are found. */
class ComparisonRatesTest {
    private static final int DAYS = 10_000;
    private static final int LOOKED_AT_DAYS = 4_000;
    private static final Looks PLANNED = new Looks.Planned(8);

    /** 5 % and three standard errors of a count out of so many days, in percent. */
    private static double mostFalse(int days) {
        return 100 * (0.05 + 3 * Math.sqrt(0.05 * 0.95 / days));
    }

    @ParameterizedTest
    @CsvSource({
        "ABBAABBA, 0, 0",
        "ABBAABBA, -1, 0",
        "ABBAABBA, -0.3, 1",
        "ABABABAB, -1, 0.5",
        "ABBAABBAABBA, -0.3, 2",
        "AAAABBBB, -1, 0"
    })
    void withNoDifferenceOneIsRarelyClaimed(String order, double percentPerTen, double coldPercent) {
        Rates rates =
                SimulatedDay.of(order, 0, new Slow(percentPerTen, coldPercent)).run(DAYS, 1, PLANNED, order.hashCode());
        assertThat(rates.claims()).isLessThanOrEqualTo(mostFalse(DAYS));
    }

    /** One label twice as unsteady costs a little; outliers make verdicts rarer, not falser. */
    @Test
    void unequalScatterAndOutliersDoNotRaiseFalseClaims() {
        SimulatedDay day = SimulatedDay.of("ABBAABBA", 0, new Slow(-0.3, 0));
        assertThat(day.withScatterRatio(2).run(DAYS, 1, PLANNED, 31).claims()).isLessThanOrEqualTo(6);
        assertThat(day.withOutliers(0.05).run(DAYS, 1, PLANNED, 32).claims()).isLessThanOrEqualTo(mostFalse(DAYS));
    }

    /** Scatter 0.3 %, four pulls each: a true 1 % is found, and none is called none, in at least 90 %. */
    @Test
    void fourPullsEachFindOnePercentAndNone() {
        Slow slow = new Slow(-0.3, 0);
        Rates different = SimulatedDay.of("ABBAABBA", 1, slow).run(DAYS, 1, PLANNED, 41);
        Rates equal = SimulatedDay.of("ABBAABBA", 0, slow).run(DAYS, 1, PLANNED, 42);
        assertThat(different.claims()).isGreaterThanOrEqualTo(90);
        assertThat(equal.same()).isGreaterThanOrEqualTo(90);
        // a true difference as large as the worth is not the same
        assertThat(different.same()).isLessThanOrEqualTo(mostFalse(DAYS));
        Rates cold = SimulatedDay.of("ABBAABBA", 1, new Slow(-0.3, 1)).run(DAYS, 1, PLANNED, 43);
        assertThat(cold.claims()).isGreaterThanOrEqualTo(90);
        assertThat(cold.same()).isLessThanOrEqualTo(mostFalse(DAYS));
    }

    /** A A A A B B B B: the interval is twice as wide, and without the drift term it would claim far too often. */
    @Test
    void blocksAreHonestlyWide() {
        Slow slow = new Slow(-1, 0);
        Rates turns = SimulatedDay.of("ABBAABBA", 0, slow).run(2000, 1, PLANNED, 51);
        Rates blocks = SimulatedDay.of("AAAABBBB", 0, slow).run(2000, 1, PLANNED, 52);
        assertThat(blocks.halfWidth() / turns.halfWidth()).isBetween(1.9, 2.2);
        assertThat(blocks.claims()).isLessThanOrEqualTo(mostFalse(2000));
    }

    /**
     * All looks of a day together make no more false claims than one: with planned pulls and a look after every block, open with looks
     * at "cannot tell, more pulls", and with a look after each block planned so.
     */
    @Test
    void lookingAgainDoesNotRaiseFalseClaims() {
        assertThat(claimedAtAnyLook(0, 4, 16, look -> new Looks.Planned(16)))
                .isLessThanOrEqualTo(mostFalse(LOOKED_AT_DAYS));
        assertThat(claimedAtAnyLook(0, 8, 24, Looks.Open::new)).isLessThanOrEqualTo(mostFalse(LOOKED_AT_DAYS));
        assertThat(claimedAtAnyLook(0, 4, 24, look -> new Looks.EachBlock()))
                .isLessThanOrEqualTo(mostFalse(LOOKED_AT_DAYS));
    }

    /**
     * A first look with nothing planned, and after "cannot tell" a second at a number fixed then: together no more false claims than
     * one look. A first look alone still finds 1 % with four pulls each.
     */
    @Test
    void goingOnAfterCannotTellDoesNotRaiseFalseClaims() {
        assertThat(claimedAtAnyLook(0, 8, 16, look -> look == 0 ? new Looks.Open(0) : new Looks.Planned(16, 1)))
                .isLessThanOrEqualTo(mostFalse(LOOKED_AT_DAYS));
        Rates different = SimulatedDay.of("ABBAABBA", 1, new Slow(-0.3, 0)).run(2000, 1, new Looks.Open(0), 71);
        assertThat(different.claims()).isGreaterThanOrEqualTo(90);
    }

    /** The remedy works: looking after every block at the plain 5 % claims a difference twice as often where there is none. */
    @Test
    void plainLooksWouldClaimTooOften() {
        assertThat(claimedAtAnyLook(0, 4, 16, look -> new Looks.Planned(4)))
                .isGreaterThan(2 * mostFalse(LOOKED_AT_DAYS) - 1);
    }

    private static double claimedAtAnyLook(double difference, int first, int last, IntFunction<Looks> looks) {
        SplittableRandom random = new SplittableRandom(61);
        SimulatedDay days = SimulatedDay.of("ABBAABBAABBAABBAABBAABBA", difference, new Slow(-1, 0));
        int claimed = 0;
        for (int day = 0; day < LOOKED_AT_DAYS; day++) {
            List<ComparedPull> pulls = days.pulls(random);
            for (int done = first; done <= last; done += 4) {
                ComparisonRequest request = new ComparisonRequest("A", 1, looks.apply((done - first) / 4), 1);
                Comparison comparison = LabelComparison.of(pulls.subList(0, done), request)
                        .value()
                        .orElseThrow()
                        .comparisons()
                        .get(0);
                // whatever the worth: a small claim is a claim
                if (comparison.basis().claimInterval().excludesZero()) {
                    claimed++;
                    break;
                }
            }
        }
        return 100.0 * claimed / LOOKED_AT_DAYS;
    }
}
