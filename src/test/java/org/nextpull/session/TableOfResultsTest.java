package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.ReferenceRow;
import org.nextpull.advice.Optimum;
import org.nextpull.session.Days.Run;

/** Tables of results through the whole chain. */
class TableOfResultsTest {
    /** A sweep run in one direction leaves room for drift, and the grid of shapes has its width: within 1 deg, without noise. */
    private static final double PEAK_TOLERANCE_DEG = 1.0;

    /** At a peak as flat as these a degree costs next to nothing: this share of torque at most, 0.02 %. */
    private static final double LEFT_AT_PEAK = 2e-4;

    /** Settings are whole half degrees, rounded toward retard, and the fit adds its own error. */
    private static final double BEST_TOLERANCE_DEG = 1.5;

    static List<ReferenceRow> engines() {
        return ReferenceRow.read("crossley_cook_optimum.csv");
    }

    private static Optimum optimum(SessionResult result) {
        return result.verdict().orElseThrow().timing().orElseThrow().optimum().orElseThrow();
    }

    /** The published torque regression of Crossley and Cook (1991), every 2 deg without noise: its optimum is known in closed form. */
    @ParameterizedTest
    @MethodSource("engines")
    void thePublishedRegressionsOptimumIsFound(ReferenceRow engine) {
        double peak = engine.number("s_mbt_deg");
        double most = engine.number("T_max_Nm");
        double fall = engine.number("k_Nm_per_deg2");
        List<Run> runs = new ArrayList<>();
        for (double advance = 10; advance <= 46; advance += 2) {
            runs.add(new Run(advance, most - fall * (advance - peak) * (advance - peak)));
        }
        SessionResult result = Days.ofTable(runs);

        assertThat(optimum(result).peak()).isCloseTo(peak, offset(PEAK_TOLERANCE_DEG));
        double apart = optimum(result).peak() - peak;
        assertThat(fall * apart * apart / most).isLessThan(LEFT_AT_PEAK);
        double least = peak - Math.sqrt(0.002 * most / fall);
        assertThat(optimum(result).best()).isCloseTo(least, offset(BEST_TOLERANCE_DEG));
        assertThat(optimum(result).best()).isLessThanOrEqualTo(peak);
        assertThat(result.verdict().orElseThrow().timing().orElseThrow().bracketed())
                .isTrue();
    }

    @Test
    void theTabulatedSweepGivesTheSameOptimum() {
        List<Run> runs = ReferenceRow.read("crossley_cook_sweep.csv").stream()
                .filter(row -> row.text("block").equals("spark"))
                .map(row -> new Run(row.number("s_deg"), row.number("T_Nm")))
                .toList();

        assertThat(optimum(Days.ofTable(runs)).peak()).isCloseTo(30.299678, offset(PEAK_TOLERANCE_DEG));
    }

    private static List<Run> noisy() {
        Random random = new Random(7);
        List<Run> runs = new ArrayList<>();
        for (double advance : new double[] {20, 20, 22, 24, 26, 28, 30, 32, 26}) {
            double x = advance - 28;
            runs.add(new Run(advance, 190 * (1 - 5e-4 * x * x + 0.001 * random.nextGaussian())));
        }
        return runs;
    }

    @Test
    void aConstantFactorOnTorqueLeavesTheAnswer() {
        Optimum plain = optimum(Days.ofTable(noisy()));
        Optimum scaled = optimum(Days.ofTable(noisy().stream()
                .map(run -> new Run(run.advanceDeg(), 0.7375621 * run.torqueNm()))
                .toList()));

        assertThat(scaled.peak()).isCloseTo(plain.peak(), offset(1e-6));
        assertThat(scaled.best()).isEqualTo(plain.best());
        assertThat(scaled.bestInterval().low()).isCloseTo(plain.bestInterval().low(), offset(1e-6));
        assertThat(scaled.response().orElseThrow())
                .isCloseTo(0.7375621 * plain.response().orElseThrow(), offset(1e-6));
    }

    @Test
    void aConstantAddedToTorqueLeavesThePeak() {
        double plain = optimum(Days.ofTable(noisy())).peak();
        double raised = optimum(Days.ofTable(noisy().stream()
                        .map(run -> new Run(run.advanceDeg(), 40 + run.torqueNm()))
                        .toList()))
                .peak();

        assertThat(raised).isCloseTo(plain, offset(0.5));
    }

    @Test
    void theOrderOfPullsWithoutDriftLeavesTheAnswer() {
        Optimum plain = optimum(Days.ofTable(noisy()));
        List<Run> mixed = new ArrayList<>(noisy());
        Collections.shuffle(mixed, new Random(3));
        Optimum shuffled = optimum(Days.ofTable(mixed));

        assertThat(shuffled.peak()).isCloseTo(plain.peak(), offset(0.5));
        assertThat(shuffled.best()).isCloseTo(plain.best(), offset(0.5));
    }

    @Test
    void threePullsOnASlopeGiveNoOptimum() {
        SessionResult result = Days.ofTable(List.of(new Run(20, 180), new Run(22, 184), new Run(24, 187)));

        assertThat(result.verdict().orElseThrow().timing().orElseThrow().optimum())
                .isEmpty();
        assertThat(result.verdict().orElseThrow().timing().orElseThrow().bracketed())
                .isFalse();
    }
}
