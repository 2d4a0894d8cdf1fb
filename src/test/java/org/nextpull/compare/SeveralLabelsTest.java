package org.nextpull.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nextpull.math.Series;
import org.nextpull.math.StudentT;
import org.nextpull.math.regression.Covariance;
import org.nextpull.math.regression.Design;
import org.nextpull.math.regression.GroupedFit;
import org.nextpull.math.regression.ReadingErrors;

class SeveralLabelsTest {
    /** Three standard errors of the 95 % point of 40,000 draws. */
    private static final double DRAWN = 0.05;

    /**
     * Two-sided 5 % points of Dunnett's t for equal groups: 2.57 (two treatments, 10 degrees of freedom) and 2.54 (three, 20) as
     * printed in Dunnett, Biometrics 20 (1964), from memory; digits by scipy 1.17 multivariate_t.
     */
    @ParameterizedTest
    @CsvSource({"2, 10, 2.56836", "3, 20, 2.54034", "4, 12, 2.80709"})
    void equalGroupsGiveDunnettsTable(int treatments, double freedom, double critical) {
        List<Series> columns = new ArrayList<>();
        int rows = 2 * (treatments + 1);
        for (int treatment = 1; treatment <= treatments; treatment++) {
            int own = treatment;
            columns.add(Series.generate(rows, row -> row / 2 == own ? 1 : 0));
        }
        List<Integer> groups = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            groups.add(row / 2);
        }
        GroupedFit fit = GroupedFit.fit(
                        new Design(columns, true),
                        Series.generate(rows, row -> row % 2),
                        new ReadingErrors(
                                Covariance.none(rows),
                                groups,
                                Series.constant(rows, 1),
                                Optional.empty(),
                                List.of(),
                                1))
                .orElseThrow();
        List<Series> contrasts = new ArrayList<>();
        for (int treatment = 1; treatment <= treatments; treatment++) {
            int own = treatment;
            contrasts.add(Series.generate(treatments + 1, index -> index == own ? 1 : 0));
        }
        double each =
                SimultaneousLevel.of(fit.covariance(contrasts), freedom, 3).each(0.05);
        assertThat(StudentT.of(freedom).twoSided(1 - each)).isCloseTo(critical, within(DRAWN));
        assertThat(fit.scatters()).allSatisfy(part -> {
            assertThat(part.variance()).isCloseTo(0.5, within(1e-12));
            assertThat(part.degreesOfFreedom()).isCloseTo(1, within(1e-12));
        });
    }

    /** The mean of a chi-squared is its degrees of freedom, the variance twice that. */
    @ParameterizedTest
    @CsvSource({"0.7", "1", "2", "5.5", "30"})
    void chiSquaredDrawsHaveTheirMoments(double freedom) {
        SplittableRandom random = new SplittableRandom(5);
        Series draws = Series.generate(200_000, draw -> SimultaneousLevel.chiSquared(freedom, random));
        assertThat(draws.mean() / freedom).isCloseTo(1, within(0.02));
        assertThat(draws.variance() / (2 * freedom)).isCloseTo(1, within(0.05));
    }

    private static List<ComparedPull> day(double[] levels, double scatter, SplittableRandom random) {
        List<String> names = List.of("A", "B", "C", "D").subList(0, levels.length);
        List<String> order = PullOrder.thereAndBack(names, 4 * levels.length);
        List<ComparedPull> pulls = new ArrayList<>();
        for (int place = 0; place < order.size(); place++) {
            double level = levels[names.indexOf(order.get(place))];
            double value = 200 * (1 + (level - 0.05 * place + scatter * random.nextGaussian()) / 100);
            pulls.add(new ComparedPull(place + 1, place, order.get(place), value, List.of()));
        }
        return pulls;
    }

    @Test
    void labelsAreRankedAndGroupedByWhatDiffers() {
        ComparisonResult result = LabelComparison.of(
                        day(new double[] {0, 3, 0.05, 3.1}, 0.1, new SplittableRandom(6)),
                        new ComparisonRequest("A", 1, new InterimLooks.Planned(16), 1))
                .value()
                .orElseThrow();
        assertThat(result.ranking().subList(0, 2)).containsExactlyInAnyOrder("B", "D");
        assertThat(result.groups()).hasSize(2);
        assertThat(result.groups().get(1)).containsExactlyInAnyOrder("A", "C");
        assertThat(result.comparisons()).extracting(Comparison::label).hasSize(3);
        assertThat(result.of("B").orElseThrow().verdict()).isEqualTo(Comparison.Verdict.MORE);
        assertThat(result.of("C").orElseThrow().verdict()).isEqualTo(Comparison.Verdict.SAME);
    }

    /** Seeded, 400 days of four equal fuels: any of the three differences from the reference is claimed in 5 % + 3 standard errors. */
    @Test
    void amongFourEqualLabelsOneIsRarelyClaimed() {
        SplittableRandom random = new SplittableRandom(7);
        int days = 400;
        int claimed = 0;
        for (int day = 0; day < days; day++) {
            boolean any = LabelComparison.of(
                            day(new double[] {0, 0, 0, 0}, 0.3, random),
                            new ComparisonRequest("A", 1, new InterimLooks.Planned(16), day))
                    .value()
                    .orElseThrow()
                    .comparisons()
                    .stream()
                    .anyMatch(comparison -> comparison.difference().interval().excludesZero());
            claimed += any ? 1 : 0;
        }
        assertThat(claimed).isBetween(4, (int) (days * (0.05 + 3 * Math.sqrt(0.05 * 0.95 / days))));
    }

    @Test
    void groupsMayOverlapAndNoneLiesWithinAnother() {
        List<List<String>> groups = LabelComparison.groups(
                List.of("A", "B", "C", "D"),
                (one, other) -> (one.equals("A") && !other.equals("B")) || (other.equals("D") && !one.equals("C")));
        assertThat(groups).containsExactly(List.of("A", "B"), List.of("B", "C"), List.of("C", "D"));
    }
}
