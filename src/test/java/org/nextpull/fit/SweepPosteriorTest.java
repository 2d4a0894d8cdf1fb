package org.nextpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.nextpull.unit.Span;

class SweepPosteriorTest {
    private static final double PEAK = 29.3;
    private static final double CURVATURE = 3.5e-4;
    private static final double[] SETTINGS = {20, 24, 28, 32, 34, 30, 26};

    private static double torque(double setting) {
        double x = setting - PEAK;
        return 200 * (1 - CURVATURE * x * x);
    }

    private static List<SweepPoint> points(DoubleUnaryOperator response, double noise) {
        Random random = new Random(4711);
        List<SweepPoint> points = new ArrayList<>();
        for (int i = 0; i < SETTINGS.length; i++) {
            double value = response.applyAsDouble(SETTINGS[i]) * (1 + noise * random.nextGaussian());
            points.add(new SweepPoint(SETTINGS[i], value, i + 1, i));
        }
        return points;
    }

    private static SweepPosterior posterior(List<SweepPoint> points) {
        return SweepPosterior.of(Sweep.of(points, SweepPriors.timing(28), Span.of(14, 40), new Permitted(40, 0.002)));
    }

    @Test
    void aNoiseFreeSweepGivesItsPeak() {
        SweepPosterior posterior = posterior(points(SweepPosteriorTest::torque, 0));
        assertThat(posterior.peak().centre()).isCloseTo(PEAK, within(0.1));
        assertThat(posterior.sharpened().peak().centre()).isCloseTo(PEAK, within(0.1));
    }

    @Test
    void theOrderOfTheListAndTheUnitOfTheResponseDoNotMatter() {
        List<SweepPoint> points = points(SweepPosteriorTest::torque, 0.002);
        List<SweepPoint> shuffled = new ArrayList<>();
        for (SweepPoint point : points) {
            shuffled.add(new SweepPoint(point.setting(), 0.7376 * point.response(), point.pull(), point.order()));
        }
        Collections.shuffle(shuffled, new Random(3));
        assertThat(posterior(shuffled).peak().centre())
                .isCloseTo(posterior(points).peak().centre(), within(1e-6));
        assertThat(posterior(shuffled).leastQuantile(0.05))
                .isCloseTo(posterior(points).leastQuantile(0.05), within(1e-6));
    }

    /** Without drift in the data, running the same readings in another order moves the answer by far less than its interval. */
    @Test
    void theOrderOfThePullsHardlyMattersWithoutDrift() {
        List<SweepPoint> points = points(SweepPosteriorTest::torque, 0.001);
        List<SweepPoint> backwards = new ArrayList<>();
        for (SweepPoint point : points) {
            backwards.add(new SweepPoint(
                    point.setting(), point.response(), point.pull(), SETTINGS.length - 1 - point.order()));
        }
        SweepPosterior one = posterior(points);
        assertThat(posterior(backwards).peak().centre())
                .isCloseTo(one.peak().centre(), within(0.35 * one.peak().sd()));
    }

    /** A constant changes the share that a degree costs, so only the prior on the curvature can move the peak, and hardly does. */
    @Test
    void aConstantAddedToTheTorqueLeavesThePeak() {
        SweepPosterior plain = posterior(points(SweepPosteriorTest::torque, 0));
        SweepPosterior raised = posterior(points(setting -> torque(setting) + 15, 0));
        assertThat(raised.peak().centre()).isCloseTo(plain.peak().centre(), within(0.1));
    }

    @Test
    void oneOutlierIsWeighedDownAndDoesNotMoveThePeak() {
        List<SweepPoint> points = points(SweepPosteriorTest::torque, 0.001);
        SweepPoint right = points.get(3);
        points.set(3, new SweepPoint(right.setting(), 0.975 * right.response(), right.pull(), right.order()));
        SweepPosterior posterior = posterior(points);
        assertThat(posterior.weightOf(3)).isLessThan(0.4);
        assertThat(posterior.weightOf(0)).isGreaterThan(0.8);
        assertThat(posterior.peak().centre()).isCloseTo(PEAK, within(0.8));
    }

    /** Readings on a slope, convex by their noise (20: 95, 24: 97.2, 28: 99.6), whose parabola has its vertex far away. */
    @Test
    void threeReadingsOnASlopeAreNotBracketed() {
        SweepPosterior posterior = posterior(
                List.of(new SweepPoint(20, 95, 1, 0), new SweepPoint(24, 97.2, 2, 1), new SweepPoint(28, 99.6, 3, 2)));
        assertThat(posterior.probabilityPeakBelow(28)).isLessThan(0.2);
        assertThat(posterior.peakQuantile(0.95)).isLessThan(60);
    }

    @Test
    void onePullPullsAtOneSettingAndTwoSettingsAreNoTrouble() {
        List<List<SweepPoint>> cases = List.of(
                List.of(new SweepPoint(24, 198, 1, 0)),
                List.of(new SweepPoint(24, 198, 1, 0), new SweepPoint(24, 198, 2, 1), new SweepPoint(24, 198, 3, 2)),
                List.of(new SweepPoint(24, 198, 1, 0), new SweepPoint(28, 199, 2, 1)));
        for (List<SweepPoint> points : cases) {
            SweepPosterior posterior = posterior(points);
            assertThat(posterior.peak().sd()).isBetween(1.0, 12.0);
            assertThat(posterior.scatterPercent()).isGreaterThan(0.09);
            assertThat(posterior.probabilityPeakBelow(28)).isBetween(0.02, 0.98);
        }
    }

    /** A ceiling far below the peak: the least setting stays finite and below the ceiling. */
    @Test
    void aCeilingFarBelowThePeakBoundsTheLeastSetting() {
        SweepPosterior posterior = posterior(points(SweepPosteriorTest::torque, 0.002));
        for (double ceiling : new double[] {26, 10, -20}) {
            SweepPosterior limited = posterior.permitting(new Permitted(ceiling, 0.002));
            assertThat(limited.leastQuantile(0.05)).isFinite();
            assertThat(limited.leastQuantile(0.5)).isLessThanOrEqualTo(Math.max(ceiling, PEAK - 30) + 0.5);
        }
    }

    @Test
    void theEdgesLieEitherSideOfThePeak() {
        SweepPosterior posterior =
                posterior(points(SweepPosteriorTest::torque, 0.001)).sharpened();
        double distance = Math.sqrt(0.002 / CURVATURE);
        assertThat(posterior.lowerEdgeQuantile(0.5)).isCloseTo(PEAK - distance, within(0.6));
        assertThat(posterior.upperEdgeQuantile(0.5)).isCloseTo(PEAK + distance, within(0.6));
    }

    @Test
    void leavingAPullOutAnswersAsIfItHadNotBeenRun() {
        List<SweepPoint> points = points(SweepPosteriorTest::torque, 0.003);
        SweepPosterior whole = posterior(points);
        List<SweepPoint> rest = new ArrayList<>(points);
        rest.remove(2);
        assertThat(whole.without(2).peak().centre())
                .isCloseTo(posterior(rest).peak().centre(), within(0.05));
    }
}
