package org.nextpull.math;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class MovingMedianTest {
    @Test
    void isTheMedianOfEachWindowCutOffAlikeAtBothEnds() {
        Random random = new Random(3);
        double[] values = random.doubles(200, -5, 5).toArray();
        for (int reach : new int[] {0, 1, 3, 8, 150}) {
            double[] medians = MovingMedian.of(values, reach);
            for (int index = 0; index < values.length; index++) {
                int here = Math.min(reach, Math.min(index, values.length - 1 - index));
                assertThat(medians[index])
                        .isEqualTo(Series.copyOf(values, index - here, index + here + 1)
                                .median());
            }
        }
    }

    @Test
    void oneValueThatStandsOffIsPassedOver() {
        assertThat(MovingMedian.of(new double[] {1, 2, 900, 4, 5}, 1)).containsExactly(1, 2, 4, 5, 5);
        assertThat(MovingMedian.of(new double[0], 3)).isEmpty();
    }
}
