package org.nextpull.math.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.math.Interval;
import org.nextpull.math.RefTable;
import org.nextpull.math.Series;

/** Vertex of a quadratic on the 88 runs of Brinkman (SAE Transactions 90, 1981), a real single-cylinder engine; expected by R. */
class VertexTest {
    private static final RefTable RUNS = RefTable.read("ethanol_brinkman1981.csv");
    private static final RefTable VERTICES = RefTable.read("ethanol_quadratic_vertex.csv");
    private static final RefTable SETS = RefTable.read("fieller_cases.csv");

    /** The tables print ten digits. */
    private static final Offset<Double> PRINTED = within(2e-9);

    static Stream<List<String>> vertices() {
        return VERTICES.rows().stream();
    }

    static Stream<List<String>> sets() {
        return SETS.rows().stream();
    }

    private static PolynomialFit fit(RefTable cases, List<String> row) {
        double low = cases.number(row, "lo");
        double high = cases.number(row, "hi");
        String compression = cases.text(row, "C");
        RefTable part = RUNS.where(run -> RUNS.number(run, "E") >= low
                && RUNS.number(run, "E") <= high
                && (compression.equals("all") || RUNS.text(run, "C").equals(compression)));
        return PolynomialFit.fit(part.column("E"), part.column("NOx"), 2).orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("vertices")
    void vertexOfTheEngineRuns(List<String> row) {
        PolynomialFit fit = fit(VERTICES, row);
        QuadraticVertex vertex = QuadraticVertex.of(fit).orElseThrow();
        assertThat(fit.degreesOfFreedom()).isEqualTo((int) VERTICES.number(row, "df"));
        assertThat(fit.residualSd()).isCloseTo(VERTICES.number(row, "s"), PRINTED);
        assertThat(fit.plain().coefficient(2)).isCloseTo(VERTICES.number(row, "b2"), Percentage.withPercentage(1e-7));
        assertThat(vertex.curvature().value()).isCloseTo(VERTICES.number(row, "b2"), Percentage.withPercentage(1e-7));
        assertThat(vertex.place().value()).isCloseTo(VERTICES.number(row, "vertex"), PRINTED);
        assertThat(vertex.place().standardError()).isCloseTo(VERTICES.number(row, "se_delta"), PRINTED);
        assertThat(vertex.place().interval(0.95).low()).isCloseTo(VERTICES.number(row, "delta_lo"), PRINTED);
        assertThat(vertex.height().value()).isCloseTo(VERTICES.number(row, "peak"), PRINTED);
        assertThat(vertex.height().standardError()).isCloseTo(VERTICES.number(row, "se_peak"), PRINTED);
        assertThat(vertex.isMaximum()).isTrue();
        Interval set = ((ConfidenceSet.Between) Fieller.vertex(fit, 0.95)).interval();
        assertThat(set.low()).isCloseTo(VERTICES.number(row, "fieller_lo"), PRINTED);
        assertThat(set.high()).isCloseTo(VERTICES.number(row, "fieller_hi"), PRINTED);
    }

    /** Narrow windows give no interval; each kind was confirmed by inverting the F test of the constrained model. */
    @ParameterizedTest
    @MethodSource("sets")
    void fiellerSetOfEveryKind(List<String> row) {
        ConfidenceSet set = Fieller.vertex(fit(SETS, row), 0.95);
        switch (SETS.text(row, "kind")) {
            case "interval" -> checkBounds(((ConfidenceSet.Between) set).interval(), row);
            case "complement" -> checkBounds(((ConfidenceSet.Outside) set).gap(), row);
            default -> assertThat(set).isEqualTo(new ConfidenceSet.WholeLine());
        }
        assertThat(set.contains(SETS.number(row, "vertex"))).isTrue();
    }

    private static void checkBounds(Interval bounds, List<String> row) {
        assertThat(bounds.low()).isCloseTo(SETS.number(row, "bound1"), PRINTED);
        assertThat(bounds.high()).isCloseTo(SETS.number(row, "bound2"), PRINTED);
    }

    /** At the rim of the set the slope of the curve differs from zero by exactly Student's t: the first-derivative test. */
    @Test
    void theSetIsThatOfTheFirstDerivative() {
        PolynomialFit fit = fit(SETS, SETS.rows().get(1));
        Interval set = ((ConfidenceSet.Between) Fieller.vertex(fit, 0.95)).interval();
        assertThat(fit.slope(set.low()).pAbove(0)).isCloseTo(0.025, within(1e-10));
        assertThat(fit.slope(set.high()).pBelow(0)).isCloseTo(0.025, within(1e-10));
    }

    /** NIST StRD Pontius is a fine quadratic fit whose vertex lies 39 times beyond the last reading. */
    @Test
    void aVertexFarBeyondTheReadingsIsNotWithin() {
        RefTable data = RefTable.read("nist/Pontius.csv");
        PolynomialFit fit =
                PolynomialFit.fit(data.column("x"), data.column("y"), 2).orElseThrow();
        QuadraticVertex vertex = QuadraticVertex.of(fit).orElseThrow();
        assertThat(vertex.place().value()).isCloseTo(1.158e8, Percentage.withPercentage(0.1));
        assertThat(vertex.isWithin(fit.range())).isFalse();
    }

    @Test
    void aStraightLineHasNoVertex() {
        Series x = Series.of(-1, -1, 0, 0, 1, 1);
        Series y = Series.of(0, 2, 1, 3, 2, 4);
        assertThat(QuadraticVertex.of(PolynomialFit.fit(x, y, 2).orElseThrow())
                        .filter(vertex -> vertex.isWithin(new Interval(-1, 1))))
                .isEmpty();
        PolynomialFit line = PolynomialFit.fit(x, y, 1).orElseThrow();
        assertThatIllegalArgumentException().isThrownBy(() -> QuadraticVertex.of(line));
        assertThatIllegalArgumentException().isThrownBy(() -> Fieller.vertex(line, 0.95));
    }
}
