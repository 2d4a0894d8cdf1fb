package org.nextpull.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RobustTest {
    /** Deviations from the median 3 are 2 1 0 1 97: their median is 1. */
    @Test
    void madIsTheMiddleDeviation() {
        assertThat(RobustScale.mad(Series.of(1, 2, 3, 4, 100))).isCloseTo(1.4826, within(1e-5));
    }

    /** Four numbers: h = 3, so the third smallest of the distances 1 2 3 3 5 6 (of 0 1 3 6), times 0.512. */
    @Test
    void qnIsAQuartileOfThePairDistances() {
        assertThat(RobustScale.qn(Series.of(0, 1, 3, 6))).isCloseTo(2.2219 * 0.512 * 3, within(0.005));
    }

    /** Both aim at the normal standard deviation; the factors for small samples were made so that the mean is right. */
    @ParameterizedTest
    @ValueSource(ints = {4, 5, 8, 9, 12, 25})
    void qnIsRightOnAverageForNormalNumbers(int size) {
        SplittableRandom random = new SplittableRandom(size);
        double sum = 0;
        int rounds = 20_000;
        for (int round = 0; round < rounds; round++) {
            sum += RobustScale.qn(Series.generate(size, index -> random.nextGaussian()));
        }
        assertThat(sum / rounds).isCloseTo(1, within(0.03));
    }

    @Test
    void halfWildNumbersDoNotMoveTheScale() {
        SplittableRandom random = new SplittableRandom(3);
        Series good = Series.generate(60, index -> random.nextGaussian());
        Series wild = good.append(Series.generate(25, index -> 1e6 + index));
        assertThat(RobustScale.qn(wild)).isBetween(0.7, 3.0);
        assertThat(RobustScale.mad(wild)).isBetween(0.7, 3.0);
        assertThat(wild.standardDeviation()).isGreaterThan(1e5);
    }

    /** Definition 7 of Hyndman and Fan on 1 2 3 4: numpy's and R's default gives 1.75, 2.5, 3.25. */
    @Test
    void quantilesInterpolate() {
        Quantiles quantiles = Quantiles.of(Series.of(4, 1, 3, 2));
        assertThat(quantiles.at(0.25)).isEqualTo(1.75);
        assertThat(quantiles.at(0.5)).isEqualTo(2.5);
        assertThat(quantiles.at(0.75)).isEqualTo(3.25);
        assertThat(quantiles.at(0)).isEqualTo(1);
        assertThat(quantiles.at(1)).isEqualTo(4);
        assertThatIllegalArgumentException().isThrownBy(() -> quantiles.at(1.01));
        assertThatIllegalArgumentException().isThrownBy(() -> Quantiles.of(Series.empty()));
    }
}
