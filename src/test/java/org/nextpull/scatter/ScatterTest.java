package org.nextpull.scatter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScatterTest {
    private static final double ROUNDING_PERCENT = 1e-9;

    /** By hand: 98, 100 and 102 lie 2, 0 and 2 from their mean of 100, so the variance is 8 / 2 and its root 2. */
    @Test
    void figuresThatAreAlikeScatterByTheirStandardDeviation() {
        Scatter scatter = Scatter.of(List.of(98.0, 100.0, 102.0)).orElseThrow();
        assertThat(scatter.percent()).isCloseTo(2, within(ROUNDING_PERCENT));
        assertThat(scatter.degreesOfFreedom()).isEqualTo(2);
    }

    @Test
    void oneFigureShowsNoScatter() {
        assertThat(Scatter.of(List.of(100.0))).isEmpty();
        assertThat(Scatter.of(List.of())).isEmpty();
    }
}
