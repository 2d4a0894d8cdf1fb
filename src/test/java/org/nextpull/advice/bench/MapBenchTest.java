package org.nextpull.advice.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A small run of {@link MapBench}, with bands as wide as its size asks for. */
class MapBenchTest {
    private static final long SEED = 2026;

    @Test
    void aMapIsFoundWithinAFifthOfAPercent() {
        MapFigures figures = MapFigures.of(MapClass.usual(), MapDay.Rules.of(4), 60, SEED);
        assertThat(figures.mean(MapOutcome::pulls)).isLessThan(5.9);
        assertThat(figures.quantile(0.9, MapOutcome::left)).isLessThan(0.25);
        assertThat(figures.much()).isLessThanOrEqualTo(0.05);
        assertThat(figures.mean(MapOutcome::rowsCovered)).isBetween(0.85, 0.98);
        assertThat(figures.quantile(0.95, MapOutcome::pastPeak)).isLessThan(8);
        assertThat(figures.mean(MapOutcome::leftByLeave)).isLessThan(0.45);
    }

    @Test
    void knockIsMetAboutOnceAndTheOtherSpeedsGoOn() {
        MapFigures figures = MapFigures.of(MapClass.usual().withKnock(), MapDay.Rules.of(4), 40, SEED);
        assertThat(figures.mean(MapOutcome::knocking)).isLessThan(1.7);
        assertThat(figures.mean(MapOutcome::leftOfMargin)).isLessThan(0.15);
        assertThat(figures.quantile(0.95, MapOutcome::deepest)).isLessThan(6);
    }

    @Test
    void aGradedLevelKeepsMostPullsOutOfKnock() {
        MapFigures figures =
                MapFigures.of(MapClass.usual().withKnock(), MapDay.Rules.of(4).graded(), 30, SEED);
        assertThat(figures.mean(MapOutcome::knocking)).isLessThan(0.6);
        assertThat(figures.mean(MapOutcome::left)).isLessThan(0.4);
    }

    @Test
    void sparkAndMixtureAreFoundTogether() {
        MapFigures figures = MapFigures.of(MapClass.usual(), MapDay.Rules.of(4).both(), 20, SEED);
        assertThat(figures.mean(MapOutcome::pulls)).isLessThan(8.5);
        assertThat(figures.quantile(0.8, MapOutcome::left)).isLessThan(0.3);
        assertThat(figures.mean(day -> day.lambdaCovered() ? 1 : 0)).isGreaterThan(0.7);
    }

    @Test
    void aFlatIgnitionIsToldItsNumberAndWhatAMapWouldGain() {
        MapFigures figures = MapFigures.of(MapClass.usual(), MapDay.Rules.of(4).flat(), 40, SEED);
        assertThat(figures.mean(MapOutcome::pulls)).isLessThan(6.5);
        assertThat(figures.quantile(0.9, MapOutcome::left)).isLessThan(0.3);
        assertThat(figures.mean(day -> day.flat().gain() ? 1 : 0)).isGreaterThan(0.78);
    }

    @Test
    void threeHeldSpeedsGiveTheWholeMapInAMinuteAndAHalfAtLoad() {
        HeldFigures figures = HeldFigures.of(MapClass.usual(), 4, 40, SEED);
        assertThat(figures.mean(HeldDay.Outcome::plateaus)).isBetween(16.0, 20.0);
        assertThat(figures.mean(HeldDay.Outcome::seconds)).isBetween(80.0, 100.0);
        assertThat(figures.most(HeldDay.Outcome::found)).isLessThan(0.06);
        assertThat(figures.mean(HeldDay.Outcome::held)).isGreaterThan(0.8);
        assertThat(figures.mean(HeldDay.Outcome::between)).isGreaterThan(0.88);
        assertThat(figures.most(HeldDay.Outcome::pulls)).isLessThanOrEqualTo(5);
        assertThat(figures.most(HeldDay.Outcome::left)).isLessThan(0.1);
    }
}
