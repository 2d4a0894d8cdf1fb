package org.nextpull.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.unit.Advance;

class SparkMapTest {
    private static final SparkMap MAP = SparkMap.of(new double[] {2000, 4000, 6000}, new double[] {18, 26, 24});

    /** A quarter of the way from 2000 to 4000 rpm is a quarter of the way from 18 to 26 deg. */
    @Test
    void aSpeedBetweenBreakpointsLiesOnTheStraightLine() {
        assertThat(MAP.degAt(2500)).isCloseTo(20, within(1e-12));
        assertThat(MAP.degAt(4000)).isEqualTo(26);
        assertThat(MAP.degAt(new double[] {3000, 5000})).containsExactly(22, 25);
    }

    @Test
    void beyondTheOutermostBreakpointsTheMapIsLevel() {
        assertThat(MAP.degAt(0)).isEqualTo(18);
        assertThat(MAP.degAt(9000)).isEqualTo(24);
    }

    @Test
    void aMapMovedAsAWholeTellsByHowMuch() {
        assertThat(MAP.shiftedBy(-1.5).shiftFrom(MAP)).hasValueCloseTo(-1.5, within(1e-12));
        assertThat(MAP.shiftedBy(-1.5).degAt(5000)).isCloseTo(23.5, within(1e-12));
    }

    @Test
    void aMapThatChangedInOneCellOrHasOtherBreakpointsIsNoMovedOne() {
        SparkMap oneCell = SparkMap.of(new double[] {2000, 4000, 6000}, new double[] {18, 26, 24.5});
        SparkMap elsewhere = SparkMap.of(new double[] {2000, 4500, 6000}, new double[] {18, 26, 24});

        assertThat(oneCell.shiftFrom(MAP)).isEmpty();
        assertThat(elsewhere.shiftFrom(MAP)).isEmpty();
        assertThat(SparkMap.flat(Advance.ofDeg(18)).shiftFrom(MAP)).isEmpty();
    }

    @Test
    void breakpointsThatDoNotRiseAreNoMap() {
        assertThatIllegalArgumentException().isThrownBy(() -> new SparkMap(List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SparkMap.of(new double[] {3000, 3000}, new double[] {20, 21}))
                .withMessageContaining("3000");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SparkMap.of(new double[] {-1, 3000}, new double[] {20, 21}));
    }
}
