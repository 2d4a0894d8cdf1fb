package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.MixturePrior;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.Surface;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.fit.SurfacePull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.SpeedBand;

/**
 * Ten thousand random days with random maps, knocks and refusals. The rule that keeps an engine alive is written here a second time,
 * from the pulls alone: no cell and no row beyond a step from the most daring clean advance at that speed, none above what knock left
 * there, none beyond the plan.
 */
class RandomMapDaysTest {
    private static final int DAYS = 10_000;
    private static final double STEP = 2;
    private static final double MARGIN = 2;
    private static final double MOST = 40;
    private static final double ROUNDING = 1e-6;

    private final Random random = new Random(20261129);

    @Test
    void noCellGoesBeyondAStepFromTheMostDaringCleanAdvanceAtItsSpeed() {
        int proposals = 0;
        for (int day = 0; day < DAYS; day++) {
            proposals += randomDay() ? 1 : 0;
        }
        assertThat(proposals).isGreaterThan(DAYS / 2);
    }

    private boolean randomDay() {
        double[] rows = rising(1 + random.nextInt(5), 2500 + random.nextInt(1500));
        boolean isFlat = random.nextInt(4) == 0;
        double[] cells = rising(2 + random.nextInt(4), 2000 + random.nextInt(2000));
        boolean withMixture = random.nextInt(4) == 0;
        List<TriedPull> tried = new ArrayList<>();
        List<SurfacePull> pulls = new ArrayList<>();
        SparkMap map = SparkMap.flat(Advance.ofDeg(20));
        int count = 1 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            map = isFlat ? SparkMap.flat(Advance.ofDeg(10 + random.nextInt(20))) : randomMap(cells);
            TriedPull pull = randomPull(map, rows, withMixture);
            tried.add(pull);
            pulls.add(torque(pull, rows, i));
        }
        SurfacePriors priors = SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(24)))
                .withMixture(withMixture ? Optional.of(MixturePrior.ofGuess(Lambda.of(0.88))) : Optional.empty());
        PlannerRules rules = new PlannerRules(
                new PlannerRules.Spark(-30, MOST, STEP, 0.5, MARGIN),
                withMixture
                        ? Optional.of(new PlannerRules.Mixture(Lambda.of(0.80), Lambda.of(0.96), 0.034, 0.005))
                        : Optional.empty(),
                PlannerRules.Ending.usual(0.2, 25),
                false);
        PlannerDecision decision = new DayPlanner(rules)
                .decide(new DayEvidence(
                        SurfacePosterior.of(new Surface(SpeedRows.ofRpm(rows), pulls, priors)),
                        tried,
                        Optional.empty(),
                        map));
        if (decision instanceof PlannerDecision.Pull next) {
            assertAllowed(next.setting(), tried, rows, map);
            return true;
        }
        return false;
    }

    private double[] rising(int count, double first) {
        double[] rpm = new double[count];
        double at = first;
        for (int i = 0; i < count; i++) {
            rpm[i] = at;
            at += 150 + random.nextInt(900);
        }
        return rpm;
    }

    private SparkMap randomMap(double[] cells) {
        double[] deg = new double[cells.length];
        for (int c = 0; c < deg.length; c++) {
            deg[c] = 12 + 0.5 * random.nextInt(36);
        }
        return SparkMap.of(cells, deg);
    }

    private TriedPull randomPull(SparkMap map, double[] rows, boolean withMixture) {
        List<TriedPull.KnockFlag> flags = new ArrayList<>();
        while (random.nextInt(3) == 0) {
            flags.add(
                    random.nextInt(6) == 0
                            ? TriedPull.KnockFlag.somewhere()
                            : TriedPull.KnockFlag.atRpm(2000 + random.nextInt(5000)));
        }
        double from = rows[0] - 300 + (random.nextInt(4) == 0 ? random.nextInt(900) : 0);
        double to =
                Math.max(from + 100, rows[rows.length - 1] + 300 - (random.nextInt(4) == 0 ? random.nextInt(900) : 0));
        Optional<Lambda> lambda =
                withMixture ? Optional.of(Lambda.of(0.80 + 0.005 * random.nextInt(30))) : Optional.empty();
        return new TriedPull(map, lambda, new SpeedBand(from, to), flags, random.nextInt(8) == 0);
    }

    private SurfacePull torque(TriedPull pull, double[] rows, int order) {
        List<SurfacePull.Reading> readings = new ArrayList<>();
        for (int r = 0; r < rows.length; r++) {
            if (pull.reached().contains(rows[r])) {
                double deg = pull.spark().degAt(rows[r]);
                double off = deg - 26;
                readings.add(new SurfacePull.Reading(
                        r, Advance.ofDeg(deg), pull.lambda(), 500 - 0.04 * off * off + 0.3 * random.nextGaussian(), 0));
            }
        }
        return new SurfacePull(0, order, false, readings);
    }

    private static void assertAllowed(EngineSetting setting, List<TriedPull> tried, double[] rows, SparkMap stood) {
        SparkMap map = setting.spark().orElseThrow();
        for (double rpm : rows) {
            assertThat(map.degAt(rpm))
                    .as("row at %s rpm of %s after %s", rpm, map, tried)
                    .isLessThanOrEqualTo(most(rpm, setting.lambda(), tried, rows) + ROUNDING);
        }
        for (SparkMap.Cell cell : map.cells()) {
            double most = most(cell.rpm(), setting.lambda(), tried, rows);
            if (!map.isFlat() && cell.advance().deg() != stood.degAt(cell.rpm())) {
                assertThat(cell.advance().deg())
                        .as("cell at %s rpm of %s after %s", cell.rpm(), map, tried)
                        .isLessThanOrEqualTo(most + ROUNDING);
            }
        }
    }

    /** The most that a speed may have, from the pulls alone. */
    private static double most(double rpm, Optional<Lambda> lambda, List<TriedPull> tried, double[] rows) {
        double most = MOST;
        double daring = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        double stood = Double.POSITIVE_INFINITY;
        for (TriedPull pull : tried) {
            double deg = pull.spark().degAt(rpm) - lost(pull, lambda);
            boolean rang = false;
            for (TriedPull.KnockFlag flag : pull.flags()) {
                if (flag.rpm().isEmpty() || isNear(flag.rpm().getAsDouble(), rpm, rows)) {
                    rang = true;
                    most = Math.min(most, deg - MARGIN);
                }
            }
            stood = Math.min(stood, deg);
            if (rpm >= pull.reached().fromRpm() && rpm <= pull.reached().toRpm()) {
                least = Math.min(least, deg);
                if (!rang && !pull.metLimit()) {
                    daring = Math.max(daring, deg);
                }
            }
        }
        if (daring > Double.NEGATIVE_INFINITY) {
            return Math.min(most, daring + STEP);
        }
        return Math.min(most, least < Double.POSITIVE_INFINITY ? least - MARGIN : stood);
    }

    private static double lost(TriedPull pull, Optional<Lambda> lambda) {
        if (lambda.isEmpty() || pull.lambda().isEmpty()) {
            return 0;
        }
        double leaner = 100 * (lambda.get().value() - pull.lambda().get().value());
        return leaner > 1 ? 0.3 * (leaner - 1) : 0;
    }

    private static boolean isNear(double flag, double rpm, double[] rows) {
        double nearest = Double.POSITIVE_INFINITY;
        for (double row : rows) {
            nearest = Math.min(nearest, Math.abs(row - flag));
        }
        return Math.abs(rpm - flag) <= Math.max(250, nearest) + ROUNDING;
    }
}
