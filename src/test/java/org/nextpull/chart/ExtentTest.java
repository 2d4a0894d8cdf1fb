package org.nextpull.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ExtentTest {
    @Test
    void onePullGetsAnAxisOfTwoPercentAroundIt() {
        Extent extent = Extent.of(List.of(new Point(20, 176.8)), Point::y);
        assertThat(extent.width()).isCloseTo(0.02 * 176.8, within(0.2));
        assertThat(extent.at(0.5)).isCloseTo(176.8, within(0.1));
    }

    @Test
    void severalPullsFillTheirs() {
        Extent extent = Extent.of(List.of(new Point(20, 176), new Point(22, 177)), Point::y);
        assertThat(extent.low()).isBetween(175.9, 176.0);
        assertThat(extent.high()).isBetween(177.0, 177.1);
    }
}
