package org.nextpull.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.scatter.Scatter;

class CurveBandTest {
    private static final int ROWS = 12;

    /** Days of two labels over twelve rows: pulls go up and down as a whole, and each row scatters by itself. */
    private static List<ComparedPull> day(String order, double difference, SplittableRandom random) {
        List<ComparedPull> pulls = new ArrayList<>();
        for (int place = 0; place < order.length(); place++) {
            String label = order.substring(place, place + 1);
            double whole = 0.25 * random.nextGaussian() - 0.05 * place + (label.equals("B") ? difference : 0);
            List<ComparedPull.RowValue> rows = new ArrayList<>();
            double sum = 0;
            for (int row = 0; row < ROWS; row++) {
                double value = (150 + 5 * row) * (1 + (whole + 0.2 * random.nextGaussian()) / 100);
                rows.add(new ComparedPull.RowValue(3000 + 250 * row, value));
                sum += value / ROWS;
            }
            pulls.add(new ComparedPull(place + 1, place, label, sum, rows));
        }
        return pulls;
    }

    private static List<Comparison.RowDifference> rows(List<ComparedPull> pulls, long seed) {
        return rows(pulls, Map.of(), seed);
    }

    private static List<Comparison.RowDifference> rows(List<ComparedPull> pulls, Map<String, Scatter> told, long seed) {
        DayFit day = new DayModel(List.of("A", "B"), told).fit(pulls);
        return new CurveBand(day, pulls, seed).against("B");
    }

    /** Seeded, 400 days: the band holds the truth at all speeds together in 95 %, within 3 standard errors below. */
    @Test
    void theBandHoldsAtAllSpeedsTogether() {
        SplittableRandom random = new SplittableRandom(21);
        int days = 400;
        int held = 0;
        int point = 0;
        for (int day = 0; day < days; day++) {
            List<Comparison.RowDifference> rows = rows(day("ABBAABBA", 1, random), day);
            held += rows.stream()
                            .allMatch(row ->
                                    row.band().low() <= 1 && 1 <= row.band().high())
                    ? 1
                    : 0;
            Comparison.RowDifference first = rows.get(0);
            point += first.band().low() <= 1 && 1 <= first.band().high() ? 1 : 0;
        }
        assertThat(held).isGreaterThanOrEqualTo((int) (days * (0.95 - 3 * Math.sqrt(0.05 * 0.95 / days))));
        // a band that holds as a whole holds at one speed more often than that
        assertThat(point).isGreaterThanOrEqualTo(held);
        assertThat(held).isLessThan(days);
    }

    /** Seeded, 300 days: what sweeps told of the scatter of the average is no residual of a row, and makes no band by speed narrower. */
    @Test
    void theBandHoldsAfterSweepsToo() {
        SplittableRandom random = new SplittableRandom(26);
        Scatter told = new Scatter(0.26, SurfaceKnowledge.SWEEP_FREEDOM);
        int days = 300;
        int held = 0;
        for (int day = 0; day < days; day++) {
            held += rows(day("ABBAAB", 1, random), Map.of("A", told, "B", told), day).stream()
                            .allMatch(row ->
                                    row.band().low() <= 1 && 1 <= row.band().high())
                    ? 1
                    : 0;
        }
        assertThat(held).isGreaterThanOrEqualTo((int) (days * (0.95 - 3 * Math.sqrt(0.05 * 0.95 / days))));
    }

    /** Seeded, 200 days of a drifting engine: the band of B's mean curve holds its level in mid-day at all speeds together. */
    @Test
    void theBandOfAMeanCurveHoldsAtAllSpeedsTogether() {
        SplittableRandom random = new SplittableRandom(24);
        int days = 200;
        int held = 0;
        for (int day = 0; day < days; day++) {
            List<ComparedPull> pulls = day("ABBAABBA", 1, random);
            DayFit fit = new DayModel(List.of("A", "B"), Map.of()).fit(pulls);
            boolean all = true;
            for (ComparisonResult.LevelCurve.Row row : new CurveBand(fit, pulls, day).levels("B")) {
                double atFirst = 150 + 5 * (row.rpm() - 3000) / 250;
                double inMidDay = atFirst * (1 + (1 - 0.05 * 3.5) / 100);
                all &= row.level().low() <= inMidDay && inMidDay <= row.level().high();
            }
            held += all ? 1 : 0;
        }
        assertThat(held)
                .isGreaterThanOrEqualTo((int) (days * (0.95 - 3 * Math.sqrt(0.05 * 0.95 / days))))
                .isLessThan(days);
    }

    /** One level is surer than the difference of two: its band is narrower by the root of two, where scatters are alike. */
    @Test
    void aMeanCurveIsSurerThanADifference() {
        List<ComparedPull> pulls = day("ABBAABBA", 1, new SplittableRandom(25));
        DayFit fit = new DayModel(List.of("A", "B"), Map.of()).fit(pulls);
        CurveBand band = new CurveBand(fit, pulls, 1);
        List<ComparisonResult.LevelCurve.Row> reference = band.levels("A");
        List<ComparisonResult.LevelCurve.Row> other = band.levels("B");
        List<Comparison.RowDifference> differences = band.against("B");
        for (int row = 0; row < ROWS; row++) {
            assertThat(reference.get(row).level().value())
                    .isCloseTo(differences.get(row).levels().reference(), within(1e-9));
            assertThat(other.get(row).level().value())
                    .isCloseTo(differences.get(row).levels().label(), within(1e-9));
        }
        double sumOfSquares = Math.pow(half(reference), 2) + Math.pow(half(other), 2);
        double ofDifference = differences.stream()
                .mapToDouble(row -> row.band().halfWidth() / 100 * row.levels().reference())
                .average()
                .orElseThrow();
        assertThat(Math.sqrt(sumOfSquares) / ofDifference).isBetween(0.85, 2.0);
    }

    private static double half(List<ComparisonResult.LevelCurve.Row> rows) {
        return rows.stream()
                .mapToDouble(row -> row.level().halfWidth())
                .average()
                .orElseThrow();
    }

    @Test
    void theSameSeedGivesTheSameBand() {
        List<ComparedPull> pulls = day("ABBAABBA", 1, new SplittableRandom(22));
        assertThat(rows(pulls, 5)).isEqualTo(rows(pulls, 5));
        assertThat(rows(pulls, 5)).isNotEqualTo(rows(pulls, 6));
        assertThat(rows(pulls, 6).get(0).band().halfWidth())
                .isCloseTo(rows(pulls, 5).get(0).band().halfWidth(), within(0.1));
    }

    @Test
    void pullsWithUnequalRowsGiveNoBand() {
        List<ComparedPull> pulls = new ArrayList<>(day("ABBAABBA", 1, new SplittableRandom(23)));
        ComparedPull last = pulls.remove(7);
        pulls.add(new ComparedPull(
                last.number(),
                last.order(),
                last.label(),
                last.value(),
                last.rows().subList(1, ROWS)));
        assertThat(rows(pulls, 1)).isEmpty();
    }
}
