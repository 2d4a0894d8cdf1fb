package org.nextpull.math.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.math.Estimate;
import org.nextpull.math.RefTable;
import org.nextpull.math.Series;

class GroupedFitTest {
    private static final Series SECOND = Series.of(0, 1);

    /** Readings that share nothing, all of weight 1, and of which nothing is known beforehand. */
    private static ReadingErrors unshared(List<Integer> groups) {
        int size = groups.size();
        return new ReadingErrors(
                Covariance.none(size), groups, Series.constant(size, 1), Optional.empty(), List.of(), 1);
    }

    /** 40 CFR 1065.602(f), worked example: t 16.63 with 11.76 degrees of freedom. */
    @Test
    void twoGroupsThatShareNothingAreTheRegulationsWelchTest() {
        Series readings = sample(11, 1205.3, 9.399).append(sample(7, 1123.8, 10.583));
        List<Integer> groups = new ArrayList<>();
        for (int row = 0; row < 18; row++) {
            groups.add(row < 11 ? 0 : 1);
        }
        Design design = Design.withIntercept(Series.generate(18, groups::get));
        Estimate difference =
                GroupedFit.fit(design, readings, unshared(groups)).orElseThrow().estimate(SECOND);
        assertThat(-difference.value() / difference.standardError()).isCloseTo(16.63, within(0.005));
        assertThat(difference.degreesOfFreedom()).isCloseTo(11.76, within(0.005));
    }

    /** Numbers with exactly that mean and standard deviation. */
    private static Series sample(int size, double mean, double sd) {
        Series raw = Series.generate(size, index -> index);
        double scale = sd / raw.standardDeviation();
        return raw.map(value -> mean + scale * (value - raw.mean()));
    }

    /**
     * Snedecor and Cochran (1967), p. 422: readings that share a straight line of any slope are adjusted as by analysis of covariance,
     * here with the reading before treatment in the place of the pull's order.
     */
    @Test
    void aSharedLineOfAnySlopeIsTheBooksAdjustment() {
        RefTable data = RefTable.read("ancova_leprosy.csv");
        List<String> drugs = List.of("F", "A", "D");
        Series pre = Series.of(data.rows().stream().mapToDouble(row -> data.number(row, "pre")));
        Series post = Series.of(data.rows().stream().mapToDouble(row -> data.number(row, "post")));
        List<Series> columns = new ArrayList<>();
        for (String drug : drugs.subList(1, 3)) {
            columns.add(Series.of(data.rows().stream()
                    .mapToDouble(row -> data.text(row, "drug").equals(drug) ? 1 : 0)));
        }
        Series line = pre.map(value -> value - pre.mean());
        double anySlope = 1e6;
        ReadingErrors errors = new ReadingErrors(
                product(line, anySlope),
                data.rows().stream().map(row -> 0).toList(),
                Series.constant(pre.size(), 1),
                Optional.empty(),
                List.of(),
                1);
        GroupedFit fit = GroupedFit.fit(new Design(columns, true), post, errors).orElseThrow();
        Series coefficients = fit.coefficients();
        assertThat(coefficients.get(1)).isCloseTo(RefTable.expected("leprosy", "A-F difference"), within(1e-5));
        assertThat(coefficients.get(0) + coefficients.get(2))
                .isCloseTo(RefTable.expected("leprosy", "adjusted mean D"), within(1e-5));
        assertThat(coefficients.get(0)).isCloseTo(RefTable.expected("leprosy", "adjusted mean F"), within(1e-5));
        assertThat(fit.sharedPart(line, anySlope).value())
                .isCloseTo(RefTable.expected("leprosy", "slope"), within(1e-5));
        assertThat(fit.pooled().degreesOfFreedom()).isCloseTo(26, within(1e-5));
    }

    /** NIST/SEMATECH e-Handbook 2.3.3.1.2: of four readings there and back, a straight drift leaves the difference alone. */
    @Test
    void aSharedLineLeavesTheDifferenceOfABlockThereAndBackAlone() {
        Series line = Series.of(-1.5, -0.5, 0.5, 1.5);
        ReadingErrors errors = new ReadingErrors(
                product(line, 0.04), List.of(0, 0, 0, 0), Series.constant(4, 1), Optional.empty(), List.of(), 1);
        Design design = Design.withIntercept(Series.of(0, 1, 1, 0));
        Series readings = Series.of(200, 202.1, 202, 199.9);
        Estimate still = GroupedFit.fit(design, readings, errors).orElseThrow().estimate(SECOND);
        Estimate drifting = GroupedFit.fit(design, readings.plus(line.times(-7)), errors)
                .orElseThrow()
                .estimate(SECOND);
        assertThat(drifting.value()).isCloseTo(still.value(), within(1e-10));
        assertThat(still.value()).isCloseTo((202.1 + 202 - 200 - 199.9) / 2, within(1e-10));
    }

    private static Covariance product(Series line, double variance) {
        double[][] matrix = new double[line.size()][line.size()];
        for (int row = 0; row < line.size(); row++) {
            for (int column = 0; column < line.size(); column++) {
                matrix[row][column] = variance * line.get(row) * line.get(column);
            }
        }
        return Covariance.of(matrix);
    }

    /** ISO 5725-2: duplicates of nine laboratories (creosote of 5725-5) have a repeatability of sqrt(sum d^2 / 2p) = 0.585. */
    @Test
    void pooledScatterIsTheStandardsRepeatability() {
        RefTable data = RefTable.read("creosote_iso5725.csv");
        int laboratories = data.rows().size();
        double[] readings = new double[2 * laboratories];
        List<Integer> groups = new ArrayList<>();
        for (int laboratory = 0; laboratory < laboratories; laboratory++) {
            List<String> row = data.rows().get(laboratory);
            double half = data.number(row, "range") / 2;
            readings[2 * laboratory] = data.number(row, "mean") + half;
            readings[2 * laboratory + 1] = data.number(row, "mean") - half;
            groups.addAll(List.of(laboratory, laboratory));
        }
        List<Series> columns = new ArrayList<>();
        for (int laboratory = 1; laboratory < laboratories; laboratory++) {
            int own = laboratory;
            columns.add(Series.generate(readings.length, row -> row / 2 == own ? 1 : 0));
        }
        GroupedFit fit = GroupedFit.fit(new Design(columns, true), Series.of(readings), unshared(groups))
                .orElseThrow();
        assertThat(Math.sqrt(fit.pooled().variance()))
                .isCloseTo(RefTable.expected("creosote", "repeatability sd s_r"), within(1e-6));
        assertThat(fit.pooled().degreesOfFreedom()).isCloseTo(9, within(1e-6));
    }
}
