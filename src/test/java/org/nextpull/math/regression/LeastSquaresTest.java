package org.nextpull.math.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.math.Estimate;
import org.nextpull.math.RefTable;
import org.nextpull.math.Series;

class LeastSquaresTest {
    private static final Series Y = Series.of(1, 3, 2, 5, 4, 6);

    /** Two speeds and a square term: the textbook decomposition gives coefficients of 1e14 in silence. */
    @Test
    void twoLevelsCarryNoSquareTerm() {
        Series x = Series.of(1500, 4200, 1500, 4200, 1500, 4200);
        Series square = x.map(value -> value * value);
        assertThat(LeastSquares.fit(Design.withIntercept(x, square), Y))
                .isEqualTo(new FitResult.Refused<>(FitResult.Refusal.COLUMNS_DEPEND));
        assertThat(PolynomialFit.fit(x, Y, 2)).isEqualTo(new FitResult.Refused<>(FitResult.Refusal.TOO_FEW_LEVELS));
    }

    @Test
    void whetherColumnsDependDoesNotHangOnUnits() {
        Series x = Series.of(1, 2, 3, 4, 5, 6);
        Series independent = Series.of(1, 0, 1, 0, 0, 1);
        for (double unit : new double[] {1e-12, 1, 1e12}) {
            assertThat(LeastSquares.fit(Design.withIntercept(x, independent.times(unit)), Y))
                    .isInstanceOf(FitResult.Fitted.class);
            assertThat(LeastSquares.fit(Design.withIntercept(x, x.times(2 * unit)), Y))
                    .isEqualTo(new FitResult.Refused<>(FitResult.Refusal.COLUMNS_DEPEND));
        }
    }

    @Test
    void aConstantColumnIsRefused() {
        assertThat(LeastSquares.fit(Design.withIntercept(Series.constant(6, 0.1)), Y))
                .isEqualTo(new FitResult.Refused<>(FitResult.Refusal.TOO_FEW_LEVELS));
        assertThat(LeastSquares.fit(Design.withoutIntercept(Series.constant(6, 0)), Y))
                .isEqualTo(new FitResult.Refused<>(FitResult.Refusal.TOO_FEW_LEVELS));
    }

    @Test
    void asManyCoefficientsAsReadingsLeaveNoScatter() {
        assertThat(PolynomialFit.fit(Series.of(1, 2, 3), Series.of(1, 2, 1), 2))
                .isEqualTo(new FitResult.Refused<>(FitResult.Refusal.NO_DEGREES_OF_FREEDOM));
        FitResult<PolynomialFit> tooFew = PolynomialFit.fit(Series.of(1, 2), Series.of(1, 2), 2);
        assertThat(tooFew).isEqualTo(new FitResult.Refused<>(FitResult.Refusal.TOO_FEW_READINGS));
        assertThat(tooFew.found()).isEmpty();
        assertThatIllegalStateException().isThrownBy(tooFew::orElseThrow);
    }

    @Test
    void aWeightOfTwoIsTheReadingTwice() {
        Series x = Series.of(1, 2, 3, 4, 5, 6);
        Series weights = Series.of(1, 2, 1, 1, 2, 1);
        LeastSquares.LinearFit weighted =
                LeastSquares.fit(Design.withIntercept(x), Y, weights).orElseThrow();
        LeastSquares.LinearFit doubled = LeastSquares.fit(
                        Design.withIntercept(x.append(Series.of(2, 5))), Y.append(Series.of(3, 4)))
                .orElseThrow();
        assertThat(weighted.coefficient(0)).isCloseTo(doubled.coefficient(0), within(1e-13));
        assertThat(weighted.coefficient(1)).isCloseTo(doubled.coefficient(1), within(1e-13));
        assertThat(4 * weighted.residualSd() * weighted.residualSd())
                .isCloseTo(6 * doubled.residualSd() * doubled.residualSd(), within(1e-12));
        assertThat(weighted.degreesOfFreedom()).isEqualTo(4);
        assertThat(doubled.degreesOfFreedom()).isEqualTo(6);
    }

    /** Adding a constant to the readings moves the constant only; errors stay. */
    @Test
    void aShiftOfTheReadingsMovesTheConstantOnly() {
        Series x = Series.of(20, 22, 24, 26, 28, 30);
        LeastSquares.LinearFit plain =
                LeastSquares.fit(Design.withIntercept(x), Y).orElseThrow();
        LeastSquares.LinearFit shifted = LeastSquares.fit(Design.withIntercept(x), Y.map(value -> value + 1000))
                .orElseThrow();
        assertThat(shifted.coefficient(0) - plain.coefficient(0)).isCloseTo(1000, within(1e-9));
        assertThat(shifted.coefficient(1)).isCloseTo(plain.coefficient(1), within(1e-11));
        assertThat(shifted.standardError(0)).isCloseTo(plain.standardError(0), within(1e-11));
    }

    /** ChemReact of Myers, Montgomery and Anderson-Cook as worked in Lenth (JSS 32, 2009): two blocks and two factors. */
    @Test
    void aResponseSurfaceInTwoBlocksIsThatOfTheBook() {
        RefTable data = RefTable.read("rsm_chemreact.csv");
        Series block = data.column("Block").map(value -> value - 1);
        Series x1 = data.column("Time").map(value -> (value - 85) / 5);
        Series x2 = data.column("Temp").map(value -> (value - 175) / 5);
        LeastSquares.LinearFit fit = LeastSquares.fit(
                        Design.withIntercept(
                                block,
                                x1,
                                x2,
                                x1.combine(x2, (left, right) -> left * right),
                                x1.map(value -> value * value),
                                x2.map(value -> value * value)),
                        data.column("Yield"))
                .orElseThrow();
        List<String> names = List.of("intercept", "block2", "x1", "x2", "x1*x2", "x1^2", "x2^2");
        for (int index = 0; index < names.size(); index++) {
            assertThat(fit.coefficient(index))
                    .isCloseTo(RefTable.expected("chemreact", "coef " + names.get(index)), within(1e-9));
            assertThat(fit.standardError(index))
                    .isCloseTo(RefTable.expected("chemreact", "se " + names.get(index)), within(1e-9));
        }
        assertThat(fit.residualSd()).isCloseTo(RefTable.expected("chemreact", "residual sd"), within(1e-9));
    }

    /** Snedecor and Cochran (1967), p. 422: drug difference adjusted for the reading before treatment. */
    @Test
    void covarianceAnalysisIsThatOfTheBook() {
        RefTable data = RefTable.read("ancova_leprosy.csv");
        Series before = data.column("pre");
        Series isA = flag(data, "A");
        Series isD = flag(data, "D");
        LeastSquares.LinearFit fit = LeastSquares.fit(Design.withIntercept(isA, isD, before), data.column("post"))
                .orElseThrow();
        assertThat(fit.coefficient(3)).isCloseTo(RefTable.expected("leprosy", "slope"), within(1e-8));
        assertThat(fit.standardError(3)).isCloseTo(RefTable.expected("leprosy", "se slope"), within(1e-8));
        assertThat(fit.coefficient(1)).isCloseTo(RefTable.expected("leprosy", "A-F difference"), within(1e-8));
        assertThat(fit.standardError(1)).isCloseTo(RefTable.expected("leprosy", "A-F se"), within(1e-8));
        Estimate adjusted = fit.estimate(Series.of(1, 0, 1, before.mean()));
        assertThat(adjusted.value()).isCloseTo(RefTable.expected("leprosy", "adjusted mean D"), within(1e-8));
    }

    private static Series flag(RefTable data, String drug) {
        return Series.of(
                data.rows().stream().mapToDouble(row -> data.text(row, "drug").equals(drug) ? 1 : 0));
    }

    @Test
    void unequalLengthsAndBadWeightsAreFaultsOfTheCaller() {
        Design design = Design.withIntercept(Series.of(1, 2, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> LeastSquares.fit(design, Series.of(1, 2)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LeastSquares.fit(design, Series.of(1, 2, 3), Series.of(1, 0, 1)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Design.withIntercept(Series.of(1, 2), Series.of(1, 2, 3)));
    }
}
