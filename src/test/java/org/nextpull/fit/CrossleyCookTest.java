package org.nextpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.nextpull.unit.Span;

/**
 * The torque regression of Crossley and Cook (1991; citation from memory, polynomial as printed in the header of
 * refdata/crossley_cook_optimum.csv), whose optimum is known in closed form, swept without noise.
 */
class CrossleyCookTest {
    /** Spark of best torque at 2500 rpm and 0.45 g of air, crossley_cook_optimum.csv. */
    private static final double BEST_SPARK_DEG = 30.299678;

    /** Least advance that gives all but 0.5 % of it, same row. */
    private static final double LEAST_HALF_PERCENT_DEG = 24.790707;

    /** Best lambda on a scale of 14.7, for every speed and charge. */
    private static final double BEST_LAMBDA = 0.876751;

    private static List<SweepPoint> sweep(String block) throws IOException {
        List<SweepPoint> points = new ArrayList<>();
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(CrossleyCookTest.class.getResourceAsStream("/refdata/crossley_cook_sweep.csv")),
                StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.split(",", -1);
                if (cells[0].equals(block)) {
                    double setting = Double.parseDouble(block.equals("spark") ? cells[1] : cells[3]);
                    double inUnits = block.equals("spark") ? setting : 100 * setting;
                    points.add(new SweepPoint(inUnits, Double.parseDouble(cells[4]), points.size() + 1, points.size()));
                }
            }
        }
        return points;
    }

    @Test
    void theSparkSweepGivesItsOptimum() throws IOException {
        Permitted permitted = new Permitted(46, 0.005);
        SweepPosterior posterior = SweepPosterior.of(
                        Sweep.of(sweep("spark"), SweepPriors.timing(28), Span.of(10, 46), permitted))
                .sharpened();
        assertThat(posterior.peak().centre()).isCloseTo(BEST_SPARK_DEG, within(0.15));
        assertThat(posterior.leastQuantile(0.5)).isCloseTo(LEAST_HALF_PERCENT_DEG, within(0.25));
        assertThat(posterior.peakQuantile(0.05)).isLessThan(BEST_SPARK_DEG);
        assertThat(posterior.peakQuantile(0.95)).isGreaterThan(BEST_SPARK_DEG);
    }

    @Test
    void theMixtureSweepGivesItsOptimum() throws IOException {
        Permitted permitted = new Permitted(105, 0.002);
        SweepPosterior posterior = SweepPosterior.of(
                        Sweep.of(sweep("mixture"), SweepPriors.mixture(86), Span.of(71, 105), permitted))
                .sharpened();
        assertThat(posterior.peak().centre() / 100).isCloseTo(BEST_LAMBDA, within(0.003));
    }
}
