package org.nextpull.advice.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.nextpull.unit.Span;

/**
 * A small run of the bench, with bands as wide as its size asks for; the page "Planner bench" has the figures of a large one, made by
 * {@link PlannerBench#main}.
 */
class PlannerBenchTest {
    private static final long SEED = 2026;

    @Test
    void thePlannerBeatsTheTradeRuleOnSteepEngines() {
        BenchResult.Sample sample = new BenchResult.Sample(120, SEED);
        BenchResult planner =
                BenchResult.of(EngineClass.steep(), BenchEngine.Kind.TIMING, sample, PlannerBench.usual()::run);
        BenchResult trade = BenchResult.of(EngineClass.steep(), BenchEngine.Kind.TIMING, sample, new TradeRule(2)::run);
        assertThat(planner.mean(SweepOutcome::pulls)).isLessThan(6.2).isLessThan(trade.mean(SweepOutcome::pulls));
        assertThat(planner.percent(SweepOutcome::isFalseStop)).isLessThanOrEqualTo(2);
        assertThat(planner.quantile(0.95, SweepOutcome::leftAtPeakPercent)).isLessThan(0.2);
        assertThat(planner.quantile(0.95, SweepOutcome::leftAtPeakPercent))
                .isLessThan(trade.quantile(0.95, SweepOutcome::leftAtPeakPercent));
        assertThat(planner.percent(SweepOutcome::covers)).isBetween(83.0, 99.0);
    }

    @Test
    void flatEnginesAreFoundToo() {
        BenchResult planner = BenchResult.of(
                PlannerBench.flat(),
                BenchEngine.Kind.TIMING,
                new BenchResult.Sample(80, SEED),
                PlannerBench.usual()::run);
        assertThat(planner.percent(SweepOutcome::isFalseStop)).isLessThanOrEqualTo(4);
        assertThat(planner.percent(SweepOutcome::covers)).isBetween(80.0, 99.0);
    }

    @Test
    void noRecommendationLiesBeyondKnock() {
        EngineClass knocking = EngineClass.steep().withKnock(Span.of(-6, 6));
        BenchResult.Sample sample = new BenchResult.Sample(60, SEED);
        BenchResult flagged = BenchResult.of(knocking, BenchEngine.Kind.TIMING, sample, PlannerBench.flagged()::run);
        BenchResult graded = BenchResult.of(knocking, BenchEngine.Kind.TIMING, sample, PlannerBench.graded()::run);
        assertThat(flagged.percent(SweepOutcome::beyondOnset)).isZero();
        assertThat(graded.percent(SweepOutcome::beyondOnset)).isZero();
        assertThat(graded.mean(SweepOutcome::excursions)).isLessThan(0.3);
        assertThat(flagged.mean(SweepOutcome::excursions)).isLessThan(1.5);
    }

    @Test
    void theMixtureBracketEndsWithinATenthOfAPercent() {
        BenchResult mixture = BenchResult.of(
                PlannerBench.mixtures(),
                BenchEngine.Kind.MIXTURE,
                new BenchResult.Sample(60, SEED),
                PlannerBench.mixture()::run);
        assertThat(mixture.percent(SweepOutcome::isFalseStop)).isLessThanOrEqualTo(4);
        assertThat(mixture.quantile(0.5, SweepOutcome::leftAtPeakPercent)).isLessThan(0.1);
    }
}
