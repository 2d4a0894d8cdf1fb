package org.nextpull.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.fit.Belief;
import org.nextpull.fit.Experience;
import org.nextpull.fit.Kin;
import org.nextpull.fit.PooledScatter;
import org.nextpull.fit.SweepPriors;
import org.nextpull.scatter.Scatter;

class TeachingTest {
    private static final Belief USUAL = SweepPriors.timing(0).curvature().asNormal();

    private static PastDays.Day day(double lnCurvature, boolean same) {
        return new PastDays.Day(
                same,
                true,
                Optional.of(new Belief(lnCurvature, 0.2)),
                Optional.empty(),
                Optional.of(new Scatter(0.2, 4)));
    }

    private static Experience taught(List<PastDays.Day> days, Kin kin) {
        return new Teaching(days, kin).experience().orElseThrow();
    }

    @Test
    void moreDaysTeachMoreButNeverMoreThanADayDiffersFromTheNext() {
        double truth = Math.log(8e-4);
        double before = USUAL.sd();
        for (int days : new int[] {1, 3, 10, 30}) {
            Belief belief = taught(Collections.nCopies(days, day(truth, true)), Kin.ENGINE)
                    .lnTimingCurvature()
                    .orElseThrow();
            assertThat(belief.sd()).isLessThan(before).isGreaterThan(0.25);
            assertThat(belief.centre()).isBetween(USUAL.centre(), truth);
            before = belief.sd();
        }
    }

    @Test
    void thePoolOfOneDayIsTheProductOfTwoNormalBeliefs() {
        // two normal beliefs multiplied, worked by hand: precisions add, centres weigh by them
        double weight = 1 / (0.25 * 0.25 + 0.2 * 0.2);
        double precision = 1 / (USUAL.sd() * USUAL.sd()) + weight;
        double centre = (USUAL.centre() / (USUAL.sd() * USUAL.sd()) + weight * -7) / precision;
        Belief belief =
                taught(List.of(day(-7, true)), Kin.ENGINE).lnTimingCurvature().orElseThrow();
        assertThat(belief.centre()).isCloseTo(centre, within(1e-12));
        assertThat(belief.sd()).isCloseTo(Math.sqrt(1 / precision + 0.25 * 0.25), within(1e-12));
    }

    @Test
    void daysThatDisagreeTeachLess() {
        List<PastDays.Day> agreed = List.of(day(-7.5, true), day(-7.5, true), day(-7.5, true), day(-7.5, true));
        List<PastDays.Day> split = List.of(day(-7.1, true), day(-7.9, true), day(-7.1, true), day(-7.9, true));
        Belief sure = taught(agreed, Kin.ENGINE).lnTimingCurvature().orElseThrow();
        Optional<Belief> unsure = taught(split, Kin.ENGINE).lnTimingCurvature();
        assertThat(unsure.map(Belief::sd).orElse(USUAL.sd())).isGreaterThan(sure.sd());
    }

    @Test
    void otherEnginesOfTheClassTeachLessThanTheSame() {
        Experience engine = taught(Collections.nCopies(5, day(-7.5, true)), Kin.ENGINE);
        Experience others = taught(Collections.nCopies(5, day(-7.5, false)), Kin.CLASS);
        assertThat(others.kin()).isEqualTo(Kin.CLASS);
        assertThat(others.days()).isEqualTo(5);
        assertThat(others.lnTimingCurvature().map(Belief::sd).orElse(USUAL.sd()))
                .isGreaterThan(engine.lnTimingCurvature().orElseThrow().sd());
        assertThat(others.scatter().orElseThrow().degreesOfFreedom())
                .isLessThan(engine.scatter().orElseThrow().degreesOfFreedom());
    }

    @Test
    void scatterIsPooledByItsDegreesOfFreedomAndKeptWide() {
        List<PastDays.Day> days = List.of(scatter(0.3, 2), scatter(0.1, 6));
        PooledScatter pooled = taught(days, Kin.ENGINE).scatter().orElseThrow();
        // pooled variance by hand: (2 x 0.09 + 6 x 0.01) / 8
        assertThat(pooled.percent()).isCloseTo(Math.sqrt(0.03), within(1e-12));
        assertThat(pooled.degreesOfFreedom()).isEqualTo(4);
        PooledScatter many = taught(Collections.nCopies(30, scatter(0.2, 6)), Kin.ENGINE)
                .scatter()
                .orElseThrow();
        assertThat(many.degreesOfFreedom()).isEqualTo(12);
    }

    @Test
    void nothingIsTaughtByNoDays() {
        assertThat(new Teaching(List.of(), Kin.CLASS).experience()).isEmpty();
    }

    private static PastDays.Day scatter(double percent, double freedom) {
        return new PastDays.Day(
                true, true, Optional.empty(), Optional.empty(), Optional.of(new Scatter(percent, freedom)));
    }
}
