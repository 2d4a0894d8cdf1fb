package org.nextpull.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeriesTest {
    @Test
    void copiesInAndOut() {
        double[] source = {1, 2, 3};
        Series series = Series.of(source);
        source[0] = 9;
        series.toArray()[1] = 9;
        assertThat(series).isEqualTo(Series.of(1, 2, 3)).hasSameHashCodeAs(Series.of(List.of(1.0, 2.0, 3.0)));
        assertThat(series).isNotEqualTo(Series.of(1, 2)).isNotEqualTo(Series.of(1, 2, 4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNotANumber(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Series.of(1, value))
                .withMessageContaining("value 1");
        assertThatIllegalArgumentException().isThrownBy(() -> Series.of(1, 2).times(value));
    }

    /** 40 CFR 1065.602(b) and (c), worked examples: mean 11.20, standard deviation 0.6619. */
    @Test
    void meanAndStandardDeviationOfTheRegulationExample() {
        Series series = Series.of(10.60, 11.91, 11.09);
        assertThat(series.mean()).isCloseTo(11.20, within(1e-12));
        assertThat(series.standardDeviation()).isCloseTo(0.6619, within(5e-5));
    }

    /** The shift that ruins the one-pass formula (built like NIST StRD NumAcc3, from memory: mean 1000000.2, sd 0.1). */
    @Test
    void standardDeviationStandsALargeOffset() {
        Series series = Series.generate(1001, index -> index == 0 ? 1000000.2 : index % 2 == 1 ? 1000000.1 : 1000000.3);
        assertThat(series.mean()).isCloseTo(1000000.2, within(1e-9));
        assertThat(series.standardDeviation()).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void medianIsTheMiddle() {
        assertThat(Series.of(3, 1, 2).median()).isEqualTo(2);
        assertThat(Series.of(4, 1, 3, 2).median()).isEqualTo(2.5);
    }

    @Test
    void emptyRowsHaveNoMean() {
        assertThatIllegalStateException().isThrownBy(() -> Series.empty().mean());
        assertThatIllegalStateException().isThrownBy(() -> Series.of(1).standardDeviation());
        assertThat(Series.empty().sum()).isZero();
    }

    @Test
    void cutsPicksAndJoins() {
        Series series = Series.of(5, 6, 7, 8);
        assertThat(series.slice(1, 3)).isEqualTo(Series.of(6, 7));
        assertThat(series.pick(IntStream.of(3, 0))).isEqualTo(Series.of(8, 5));
        assertThat(series.filter(value -> value > 6)).isEqualTo(Series.of(7, 8));
        assertThat(Series.of(1).append(Series.of(0))).isEqualTo(Series.of(1, 0));
        assertThat(Series.of(1, 0).sorted()).isEqualTo(Series.of(0, 1));
        assertThat(Series.of(1, 1, 2).distinct()).isEqualTo(2);
    }

    @Test
    void combinesPlaceByPlace() {
        assertThat(Series.of(1, 2).plus(Series.of(3, 5))).isEqualTo(Series.of(4, 7));
        assertThat(Series.of(1, 2).minus(Series.of(3, 5))).isEqualTo(Series.of(-2, -3));
        assertThatIllegalArgumentException().isThrownBy(() -> Series.of(1).plus(Series.of(1, 2)));
    }
}
