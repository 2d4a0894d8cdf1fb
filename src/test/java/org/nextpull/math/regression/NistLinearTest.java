package org.nextpull.math.regression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nextpull.math.RefTable;
import org.nextpull.math.Series;

/**
 * NIST StRD linear regression sets. Digits are those of the worst coefficient; Filip's raw powers of ten degrees and Wampler's large
 * noise are known to cost digits in double precision.
 */
class NistLinearTest {
    private static final RefTable CERTIFIED = RefTable.read("nist/nist_certified.csv");

    @ParameterizedTest
    @CsvSource({
        "Norris, 1, 12, 12",
        "Pontius, 2, 12, 12",
        "Filip, 10, 7, 7",
        "Wampler1, 5, 9, 9",
        "Wampler2, 5, 12, 12",
        "Wampler3, 5, 9, 12",
        "Wampler4, 5, 7, 12",
        "Wampler5, 5, 5, 12"
    })
    void polynomialReachesTheCertifiedDigits(String set, int degree, double digits, double errorDigits) {
        RefTable data = RefTable.read("nist/" + set + ".csv");
        PolynomialFit fit =
                PolynomialFit.fit(data.column("x"), data.column("y"), degree).orElseThrow();
        check(set, fit.plain(), 0, digits, errorDigits);
    }

    @ParameterizedTest
    @CsvSource({"NoInt1", "NoInt2"})
    void lineThroughTheOriginReachesTheCertifiedDigits(String set) {
        RefTable data = RefTable.read("nist/" + set + ".csv");
        LeastSquares.LinearFit fit = LeastSquares.fit(Design.withoutIntercept(data.column("x")), data.column("y"))
                .orElseThrow();
        check(set, fit, 1, 12, 12);
    }

    @ParameterizedTest
    @CsvSource({"Longley"})
    void sixNearlyDependentColumnsReachTheCertifiedDigits(String set) {
        RefTable data = RefTable.read("nist/" + set + ".csv");
        Series[] columns = data.header().stream().skip(1).map(data::column).toArray(Series[]::new);
        LeastSquares.LinearFit fit = LeastSquares.fit(Design.withIntercept(columns), data.column("y"))
                .orElseThrow();
        check(set, fit, 0, 12, 12);
    }

    private static void check(
            String set, LeastSquares.LinearFit fit, int firstName, double digits, double errorDigits) {
        List<String> scatter = CERTIFIED.row(set, "residual_sd");
        for (int index = 0; index < fit.coefficients().size(); index++) {
            List<String> row = CERTIFIED.row(set, "B" + (index + firstName));
            assertThat(digits(fit.coefficient(index), CERTIFIED.number(row, "value_exact")))
                    .as(set + " B" + index)
                    .isGreaterThanOrEqualTo(digits);
            double error = CERTIFIED.number(row, "sd_exact");
            if (error > 0) {
                assertThat(digits(fit.standardError(index), error))
                        .as(set + " error of B" + index)
                        .isGreaterThanOrEqualTo(errorDigits);
            }
        }
        double certifiedSd = CERTIFIED.number(scatter, "value_exact");
        if (certifiedSd > 0) {
            assertThat(digits(fit.residualSd(), certifiedSd)).isGreaterThanOrEqualTo(errorDigits);
        }
        assertThat(fit.degreesOfFreedom())
                .isEqualTo((int) CERTIFIED.number(CERTIFIED.row(set, "df_residual"), "value_exact"));
    }

    /** Correct decimal digits, the measure of McCullough (1998) that NIST's sets are judged by. */
    private static double digits(double value, double certified) {
        return value == certified ? 16 : -Math.log10(Math.abs(value - certified) / Math.abs(certified));
    }
}
