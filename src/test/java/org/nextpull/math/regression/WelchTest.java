package org.nextpull.math.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.math.Estimate;
import org.nextpull.math.RefTable;

class WelchTest {
    /** 40 CFR 1065.602(f): t 16.63 and 11.76 degrees of freedom from 11 and 7 readings. */
    @Test
    void degreesOfFreedomOfTheRegulationExample() {
        VariancePart reference = new VariancePart(9.399 * 9.399 / 11, 10);
        VariancePart other = new VariancePart(10.583 * 10.583 / 7, 6);
        assertThat(VariancePart.satterthwaite(List.of(reference, other))).isCloseTo(11.7575833, within(1e-7));
        double t = (1205.3 - 1123.8) / Math.sqrt(reference.variance() + other.variance());
        assertThat(t).isCloseTo(16.63, within(0.005));
    }

    /** NIST/SEMATECH e-Handbook 1.3.5.3, AUTO83B. */
    @Test
    void twoSamplesOfTheHandbook() {
        RefTable data = RefTable.read("auto83b.csv");
        Estimate difference = WelchDifference.of(
                data.where("group", "US").column("mpg"),
                data.where("group", "Japan").column("mpg"));
        assertThat(difference.standardErrorsFrom(0)).isCloseTo(RefTable.expected("auto83b", "Welch t"), within(1e-9));
        assertThat(difference.degreesOfFreedom()).isCloseTo(RefTable.expected("auto83b", "Welch df"), within(1e-8));
        assertThat(difference.interval(0.95).low())
                .isCloseTo(RefTable.expected("auto83b", "Welch 95% lo"), within(1e-8));
        assertThat(difference.interval(0.95).high())
                .isCloseTo(RefTable.expected("auto83b", "Welch 95% hi"), within(1e-8));
    }

    /** Two one-sided tests on Student's sleep data, bounds 0.5: neither different nor equal (TOSTER 0.8.6, IntroTOSTt). */
    @Test
    void twoOneSidedTestsOfTheSleepData() {
        RefTable data = RefTable.read("sleep.csv");
        Estimate difference = WelchDifference.of(
                data.where("group", "1").column("extra"),
                data.where("group", "2").column("extra"));
        assertThat(difference.pAbove(-0.5)).isCloseTo(RefTable.expected("sleep_tost", "lower p"), within(1e-9));
        assertThat(difference.pBelow(0.5)).isCloseTo(RefTable.expected("sleep_tost", "upper p"), within(1e-9));
        assertThat(difference.interval(0.90).low()).isCloseTo(RefTable.expected("sleep_tost", "90% lo"), within(1e-9));
        assertThat(difference.degreesOfFreedom()).isCloseTo(RefTable.expected("sleep_tost", "df"), within(1e-9));
    }

    @Test
    void partsWithoutScatterGiveTheLeastDegreesOfFreedom() {
        assertThat(VariancePart.satterthwaite(List.of(new VariancePart(0, 3), new VariancePart(0, 5))))
                .isEqualTo(3);
        assertThat(VariancePart.satterthwaite(List.of(new VariancePart(2, 3), new VariancePart(0, 5))))
                .isEqualTo(3);
        assertThatIllegalArgumentException().isThrownBy(() -> VariancePart.satterthwaite(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new VariancePart(1, 0));
    }
}
