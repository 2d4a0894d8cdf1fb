package org.nextpull.math.smooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.math.RefTable;
import org.nextpull.math.Series;

class SavitzkyGolayTest {
    private static final RefTable TABLE = RefTable.read("savitzky_golay.csv");

    static Stream<List<String>> rows() {
        return TABLE.rows().stream();
    }

    /** Printed tables of whole numbers over a common denominator; each quotient is rounded once, so they agree to the last bit. */
    @ParameterizedTest
    @MethodSource("rows")
    void weightsAreThoseOfTheTables(List<String> row) {
        int derivative = (int) TABLE.number(row, "deriv");
        int window = (int) TABLE.number(row, "window");
        int degree = (int) TABLE.number(row, "degree");
        SavitzkyGolay filter = derivative == 0
                ? SavitzkyGolay.smoothing(window, degree)
                : SavitzkyGolay.derivative(window, degree, derivative);
        double denominator = TABLE.number(row, "denominator");
        Series expected = Series.of(Stream.of(TABLE.text(row, "coefficients").split(" "))
                .mapToDouble(text -> Double.parseDouble(text) / denominator));
        assertThat(filter.weights((int) TABLE.number(row, "pos"))).isEqualTo(expected);
    }

    /** A polynomial of the filter's degree goes through unchanged, ends included, and its slope comes out right. */
    @Test
    void aCubicPassesUnchangedUpToTheEnds() {
        double spacing = 0.02;
        Series x = Series.generate(30, index -> index * spacing);
        Series cubic = x.map(value -> 2 - value + 3 * value * value - 5 * value * value * value);
        Series slope = x.map(value -> -1 + 6 * value - 15 * value * value);
        Series bend = x.map(value -> 6 - 30 * value);
        assertClose(SavitzkyGolay.smoothing(9, 3).apply(cubic, spacing), cubic, 1e-12);
        assertClose(SavitzkyGolay.derivative(9, 3, 1).apply(cubic, spacing), slope, 1e-10);
        assertClose(SavitzkyGolay.derivative(9, 3, 2).apply(cubic, spacing), bend, 1e-8);
    }

    @ParameterizedTest
    @CsvSource({"4, 2, 0", "5, 5, 0", "5, 2, 3", "-1, 0, 0", "5, -1, 0"})
    void impossibleFiltersAreRefused(int window, int degree, int derivative) {
        assertThatIllegalArgumentException().isThrownBy(() -> SavitzkyGolay.derivative(window, degree, derivative));
    }

    @Test
    void fewerReadingsThanTheWindowAreRefused() {
        SavitzkyGolay filter = SavitzkyGolay.smoothing(5, 2);
        assertThatIllegalArgumentException().isThrownBy(() -> filter.apply(Series.of(1, 2, 3, 4), 1));
        assertThatIllegalArgumentException().isThrownBy(() -> filter.apply(Series.constant(5, 1), 0));
    }

    /** On even spacing with equal weights the local quadratic is the same filter, ends included. */
    @Test
    void localQuadraticOnEvenSpacingIsSavitzkyGolay() {
        SplittableRandom random = new SplittableRandom(8);
        double spacing = 0.05;
        Series x = Series.generate(40, index -> 10 + index * spacing);
        Series y = Series.generate(40, index -> random.nextGaussian());
        LocalQuadratic local = LocalQuadratic.of(x, y, 4 * spacing, LocalQuadratic.Kernel.EVEN);
        Series smooth = SavitzkyGolay.smoothing(9, 2).apply(y, spacing);
        Series slope = SavitzkyGolay.derivative(9, 2, 1).apply(y, spacing);
        assertClose(local.values().slice(4, 36), smooth.slice(4, 36), 1e-9);
        assertClose(local.slopes().slice(4, 36), slope.slice(4, 36), 1e-7);
    }

    @ParameterizedTest
    @MethodSource("kernels")
    void aQuadraticOnUnevenPlacesPassesUnchanged(LocalQuadratic.Kernel kernel) {
        SplittableRandom random = new SplittableRandom(9);
        double[] place = {0};
        Series x = Series.generate(50, index -> place[0] += 0.005 + 0.03 * random.nextDouble());
        Series y = x.map(value -> 300 + 40 * value - 7 * value * value);
        Series slope = x.map(value -> 40 - 14 * value);
        for (double halfWidth : new double[] {1e-6, 0.05, 0.2, 10}) {
            LocalQuadratic local = LocalQuadratic.of(x, y, halfWidth, kernel);
            assertClose(local.values(), y, 1e-8);
            assertClose(local.slopes(), slope, 1e-4);
            assertThat(local.slopeAt(0.4321)).isCloseTo(40 - 14 * 0.4321, within(1e-5));
            assertThat(local.valueAt(0.4321)).isCloseTo(300 + 40 * 0.4321 - 7 * 0.4321 * 0.4321, within(1e-8));
        }
    }

    static Stream<LocalQuadratic.Kernel> kernels() {
        return Stream.of(LocalQuadratic.Kernel.values());
    }

    @Test
    void placesMustIncrease() {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        LocalQuadratic.of(Series.of(1, 1, 2), Series.of(1, 2, 3), 1, LocalQuadratic.Kernel.TRICUBE));
    }

    private static void assertClose(Series actual, Series expected, double tolerance) {
        assertThat(actual.minus(expected).map(Math::abs).max()).isLessThan(tolerance);
    }
}
