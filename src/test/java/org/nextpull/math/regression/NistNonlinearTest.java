package org.nextpull.math.regression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nextpull.math.RefTable;
import org.nextpull.math.Series;

/** NIST StRD nonlinear regression sets, certified to 11 digits; the nearer start always, the farther where it is in reach. */
class NistNonlinearTest {
    private static final RefTable CERTIFIED = RefTable.read("nist/nist_certified_nls.csv");
    private static final Map<String, NonlinearLeastSquares.Curve> CURVES = Map.of(
            "Eckerle4",
            (x, b) -> b.get(0) / b.get(1) * Math.exp(-0.5 * square((x - b.get(2)) / b.get(1))),
            "DanWood",
            (x, b) -> b.get(0) * Math.pow(x, b.get(1)),
            "Misra1a",
            (x, b) -> b.get(0) * (1 - Math.exp(-b.get(1) * x)),
            "Rat42",
            (x, b) -> b.get(0) / (1 + Math.exp(b.get(1) - b.get(2) * x)),
            "Kirby2",
            (x, b) -> (b.get(0) + x * (b.get(1) + x * b.get(2))) / (1 + x * (b.get(3) + x * b.get(4))),
            "Thurber",
            (x, b) -> (b.get(0) + x * (b.get(1) + x * (b.get(2) + x * b.get(3))))
                    / (1 + x * (b.get(4) + x * (b.get(5) + x * b.get(6)))),
            "Gauss1",
            (x, b) -> b.get(0) * Math.exp(-b.get(1) * x)
                    + b.get(2) * Math.exp(-square((x - b.get(3)) / b.get(4)))
                    + b.get(5) * Math.exp(-square((x - b.get(6)) / b.get(7))));

    @ParameterizedTest
    @CsvSource({
        "Eckerle4, start2", "DanWood, start1", "DanWood, start2", "Misra1a, start1", "Misra1a, start2", "Rat42, start1",
        "Rat42, start2", "Kirby2, start1", "Kirby2, start2", "Thurber, start1", "Thurber, start2", "Gauss1, start1",
        "Gauss1, start2"
    })
    void fitReachesTheCertifiedValues(String set, String start) {
        RefTable data = RefTable.read("nist/" + set + ".csv");
        RefTable rows = CERTIFIED.where("dataset", set);
        RefTable parameters = rows.where(row -> rows.text(row, "quantity").startsWith("b"));
        NonlinearFit fit = NonlinearLeastSquares.fit(
                        java.util.Objects.requireNonNull(CURVES.get(set)),
                        data.column("x"),
                        data.column("y"),
                        parameters.column(start))
                .orElseThrow();
        for (int index = 0; index < fit.parameters().size(); index++) {
            assertThat(fit.parameters().get(index))
                    .as(set + " b" + (index + 1))
                    .isCloseTo(parameters.column("certified").get(index), Percentage.withPercentage(1e-5));
            assertThat(fit.estimate(index).standardError())
                    .as(set + " error of b" + (index + 1))
                    .isCloseTo(parameters.column("sd").get(index), Percentage.withPercentage(1e-4));
        }
        assertThat(fit.residualSumOfSquares())
                .isCloseTo(CERTIFIED.number(CERTIFIED.row(set, "rss"), "certified"), Percentage.withPercentage(1e-7));
        assertThat(fit.degreesOfFreedom()).isEqualTo((int) CERTIFIED.number(CERTIFIED.row(set, "df"), "certified"));
    }

    private static double square(double value) {
        return value * value;
    }

    @Test
    void aCurveThatGivesNoNumberIsRefusedAtOnce() {
        FitResult<NonlinearFit> result = NonlinearLeastSquares.fit(
                (x, b) -> Math.sqrt(-1 - b.get(0)), Series.of(1, 2, 3), Series.of(1, 2, 3), Series.of(1));
        assertThat(result).isEqualTo(new FitResult.Refused<>(FitRefusal.NOT_FINITE));
    }

    @Test
    void parametersThatCannotBeToldApartAreRefused() {
        FitResult<NonlinearFit> result = NonlinearLeastSquares.fit(
                (x, b) -> (b.get(0) + b.get(1)) * x, Series.of(1, 2, 3, 4), Series.of(1, 2, 3.1, 4), Series.of(1, 1));
        assertThat(result).isEqualTo(new FitResult.Refused<>(FitRefusal.COLUMNS_DEPEND));
    }

    @Test
    void asManyParametersAsReadingsLeaveNoScatter() {
        NonlinearLeastSquares.Curve line = (x, b) -> b.get(0) + b.get(1) * x;
        assertThat(NonlinearLeastSquares.fit(line, Series.of(1, 2), Series.of(1, 2), Series.of(1, 1)))
                .isEqualTo(new FitResult.Refused<>(FitRefusal.NO_DEGREES_OF_FREEDOM));
        assertThat(NonlinearLeastSquares.fit(line, Series.of(1), Series.of(1), Series.of(1, 1)))
                .isEqualTo(new FitResult.Refused<>(FitRefusal.TOO_FEW_READINGS));
    }
}
