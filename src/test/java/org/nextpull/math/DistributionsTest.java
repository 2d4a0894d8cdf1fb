package org.nextpull.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DistributionsTest {
    private static final RefTable T_TABLE = RefTable.read("t_critical_cfr.csv");

    static Stream<List<String>> printedRows() {
        return T_TABLE.rows().stream();
    }

    /** 40 CFR 1065.602, Table 1, as printed, and eight digits by scipy (cut off, not rounded). */
    @ParameterizedTest
    @MethodSource("printedRows")
    void criticalValuesAreThoseOfTheRegulation(List<String> row) {
        StudentT t = StudentT.of(T_TABLE.number(row, "df"));
        assertThat(t.twoSided(0.90)).isCloseTo(T_TABLE.number(row, "t90_printed"), within(5.1e-4));
        assertThat(t.twoSided(0.95)).isCloseTo(T_TABLE.number(row, "t95_printed"), within(5.1e-4));
        assertThat(t.twoSided(0.95)).isCloseTo(T_TABLE.number(row, "exact95"), within(1.1e-8));
        assertThat(t.quantile(0.95)).isCloseTo(T_TABLE.number(row, "exact90"), within(1.1e-8));
    }

    /** Far out, one minus the lower tail has no digits left; 9.26774e-18 and 7.61985e-24 by scipy 1.17. */
    @Test
    void farTailsKeepTheirDigits() {
        assertThat(StudentT.of(5).above(4000)).isCloseTo(9.26774e-18, Percentage.withPercentage(0.01));
        assertThat(StudentT.of(5).below(-4000)).isCloseTo(9.26774e-18, Percentage.withPercentage(0.01));
        assertThat(Normal.above(10)).isCloseTo(7.61985e-24, Percentage.withPercentage(0.01));
    }

    /** With one degree of freedom it is Cauchy's, whose quantile is a tangent; the median is 0 for any. */
    @Test
    void oneDegreeOfFreedomIsCauchy() {
        assertThat(StudentT.of(1).quantile(0.9)).isCloseTo(Math.tan(0.4 * Math.PI), within(1e-12));
        assertThat(StudentT.of(2.5).quantile(0.5)).isCloseTo(0, within(1e-12));
    }

    /** 1.959964 and 1.644854: the normal table of any handbook. */
    @Test
    void normalQuantilesAreThoseOfTheTable() {
        assertThat(Normal.quantile(0.975)).isCloseTo(1.959963984540054, within(1e-12));
        assertThat(Normal.quantile(0.95)).isCloseTo(1.6448536269514722, within(1e-12));
        assertThat(Normal.below(Normal.quantile(0.3))).isCloseTo(0.3, within(1e-14));
        assertThat(Normal.density(0)).isCloseTo(1 / Math.sqrt(2 * Math.PI), within(1e-15));
    }

    /** The square of t with n degrees of freedom is F with 1 and n; chi-squared with 2 is exponential. */
    @Test
    void distributionsAreKinOfOneAnother() {
        double t = StudentT.of(7).twoSided(0.95);
        assertThat(FisherF.of(1, 7).quantile(0.95)).isCloseTo(t * t, within(1e-9));
        assertThat(FisherF.of(1, 7).above(t * t)).isCloseTo(0.05, within(1e-12));
        assertThat(ChiSquared.of(2).quantile(0.7)).isCloseTo(-2 * Math.log(0.3), within(1e-10));
        assertThat(ChiSquared.of(2).above(3)).isCloseTo(Math.exp(-1.5), within(1e-13));
    }

    /** chi-squared 0.025 and 0.975 with 9 degrees of freedom: 2.700 and 19.023 in any handbook. */
    @Test
    void intervalOfAStandardDeviation() {
        Interval interval = ChiSquared.of(9).standardDeviation(1, 0.95);
        assertThat(interval.low()).isCloseTo(Math.sqrt(9 / 19.0228), within(1e-5));
        assertThat(interval.high()).isCloseTo(Math.sqrt(9 / 2.70039), within(1e-5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN})
    void aProbabilityLiesInside(double probability) {
        assertThatIllegalArgumentException().isThrownBy(() -> StudentT.of(3).quantile(probability));
        assertThatIllegalArgumentException().isThrownBy(() -> Normal.quantile(probability));
        assertThatIllegalArgumentException().isThrownBy(() -> ChiSquared.of(3).quantile(probability));
    }

    /** At the rim of the interval of an estimate the p-value is half the rest. */
    @Test
    void estimateAgreesWithItsInterval() {
        Estimate estimate = new Estimate(2, 0.5, 6.5);
        Interval interval = estimate.interval(0.95);
        assertThat(StudentT.of(6.5).above((2 - interval.low()) / 0.5)).isCloseTo(0.025, within(1e-12));
        assertThat(StudentT.of(6.5).below((2 - interval.high()) / 0.5)).isCloseTo(0.025, within(1e-12));
        assertThat(estimate.rescaled(-2, 1).interval(0.95).low()).isCloseTo(1 - 2 * interval.high(), within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(1, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(Double.NaN, 1, 1));
    }
}
