package org.nextpull.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Checked against the exact Savitzky-Golay weights of {@code refdata/savitzky_golay.csv} (Savitzky and Golay 1964; its own header says more). */
class WindowQuadraticTest {
    private static final double ROUNDING = 1e-12;

    /** Rows of degree 2: window, derivative, place, denominator, coefficients. */
    static Stream<String> weightsOfDegreeTwo() throws IOException {
        try (InputStream in = WindowQuadraticTest.class.getResourceAsStream("/refdata/savitzky_golay.csv")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            List<String> rows =
                    text.lines().filter(line -> line.matches("\\d+,2,[01],.*")).toList();
            assertThat(rows).hasSizeGreaterThan(15);
            return rows.stream();
        }
    }

    @ParameterizedTest
    @MethodSource("weightsOfDegreeTwo")
    void isTheSavitzkyGolayFilterOnEvenlySpacedPoints(String row) {
        String[] field = row.split(",", -1);
        int window = Integer.parseInt(field[0]);
        boolean slope = field[2].equals("1");
        double place = Double.parseDouble(field[3]);
        double[] weights = Arrays.stream(field[5].split(" ", -1))
                .mapToDouble(text -> Double.parseDouble(text) / Double.parseDouble(field[4]))
                .toArray();
        Series x = Series.generate(window, index -> index - (window - 1) / 2.0);
        for (int point = 0; point < window; point++) {
            int one = point;
            WindowQuadratic fit = new WindowQuadratic(x, Series.generate(window, index -> index == one ? 1 : 0));
            WindowQuadratic.Local local = fit.at(place, 0, window);
            assertThat(slope ? local.slope() : local.value()).isCloseTo(weights[point], within(ROUNDING));
        }
    }

    @Test
    void atEachPointItIsWhatItIsThere() {
        Series x = Series.of(-1, -1, 0, 0.1, 0.35, 0.4, 0.4, 0.9, 1.3, 1.31, 2.0, 9, 9.5);
        WindowQuadratic fit = new WindowQuadratic(x, x.map(Math::sin));
        for (double halfWindow : new double[] {0, 0.05, 0.5, 20}) {
            assertThat(fit.atEach(halfWindow, 4))
                    .isEqualTo(x.stream()
                            .mapToObj(place -> fit.at(place, halfWindow, 4))
                            .toList());
        }
    }

    @Test
    void followsAQuadraticExactlyThroughUnevenPoints() {
        Series x = Series.of(0, 0.1, 0.35, 0.4, 0.9, 1.3, 1.31, 2.0);
        WindowQuadratic fit = new WindowQuadratic(x, x.map(u -> 3 - 2 * u + 5 * u * u));
        for (double place : new double[] {0, 0.33, 1.2, 2.0}) {
            WindowQuadratic.Local local = fit.at(place, 0.6, 4);
            assertThat(local.value()).isCloseTo(3 - 2 * place + 5 * place * place, within(1e-9));
            assertThat(local.slope()).isCloseTo(-2 + 10 * place, within(1e-9));
        }
    }

    @Test
    void fewOrEqualPointsGiveALineOrAMean() {
        WindowQuadratic line = new WindowQuadratic(Series.of(1, 2), Series.of(10, 30));
        assertThat(line.at(1.5, 5, 5).value()).isCloseTo(20, within(ROUNDING));
        assertThat(line.at(1.5, 5, 5).slope()).isCloseTo(20, within(ROUNDING));
        WindowQuadratic same = new WindowQuadratic(Series.of(1, 1, 1), Series.of(1, 2, 6));
        assertThat(same.at(1, 5, 5)).isEqualTo(new WindowQuadratic.Local(3, 0));
        assertThat(same.at(4, 0.1, 3).value()).isCloseTo(3, within(ROUNDING));
    }

    @Test
    void refusesFallingAbscissasAndUnequalSizes() {
        assertThatIllegalArgumentException().isThrownBy(() -> new WindowQuadratic(Series.of(2, 1), Series.of(0, 0)));
        assertThatIllegalArgumentException().isThrownBy(() -> new WindowQuadratic(Series.of(1, 2), Series.of(0)));
    }
}
