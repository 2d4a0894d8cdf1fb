package org.nextpull.simulator.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A small run of the bench, with bands as wide as its size asks for; the page "Planner bench" has the figures of a large one, made by
 * {@link PhysicalBench#main}.
 */
class PhysicalBenchTest {
    private static final int ENGINES = 60;
    private static final long SEED = 2026;

    @Test
    void thePlannerHoldsOnPhysicalEngines() {
        List<PhysicalSweep> planned = PhysicalBench.run(SEED, ENGINES, PhysicalSweep::planned);
        List<PhysicalSweep> free = PhysicalBench.only(planned, sweep -> !sweep.limited());
        assertThat(free).hasSizeBetween(ENGINES / 4, ENGINES - 5);
        assertThat(PhysicalBench.mean(planned, PhysicalSweep::pulls)).isLessThan(9);
        assertThat(PhysicalBench.percent(free, PhysicalSweep::isFalseStop)).isLessThan(10);
        assertThat(PhysicalBench.quantile(free, 0.5, PhysicalSweep::leftPercent))
                .isBetween(0.0, 0.3);
        assertThat(PhysicalBench.percent(free, PhysicalSweep::covers)).isBetween(70.0, 100.0);
        assertThat(PhysicalBench.mean(free, PhysicalSweep::excursions)).isLessThan(0.3);
    }

    @Test
    void oneSeedDrawsTheSameEngines() {
        assertThat(PhysicalBench.run(1, 4, PhysicalSweep::traded))
                .isEqualTo(PhysicalBench.run(1, 4, PhysicalSweep::traded))
                .isNotEqualTo(PhysicalBench.run(2, 4, PhysicalSweep::traded));
    }
}
