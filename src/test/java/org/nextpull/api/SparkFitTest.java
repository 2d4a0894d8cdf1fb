package org.nextpull.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.unit.Advance;

/**
 * Sweeps of the torque regression of Crossley and Cook (1991; citation from memory, polynomial and optima as printed in
 * refdata/crossley_cook_optimum.csv), whose optimum is known in closed form.
 */
class SparkFitTest {
    private static final double AIR_G = 0.45;
    private static final double AIR_FUEL_RATIO = 12.88823529;
    /** Rows of 0.45 g of air: best spark at 1500, 2500 and 3500 rpm, and the least that gives all but 0.5 % at 2500 rpm. */
    private static final double[] RPM = {1500, 2500, 3500};

    private static final double[] BEST_DEG = {29.306289, 30.299678, 31.293067};
    private static final double LEAST_HALF_PERCENT_DEG = 24.790707;
    /** Not in order of advance: a drift of the day could not be told from the sweep. */
    private static final double[] ADVANCE_DEG = {22, 26, 30, 34, 36, 32, 28, 24};
    /** What eight pulls without noise leave of an expectation that is 2 to 3 degrees off. */
    private static final double FIT_DEG = 0.25;

    private static double torqueNm(double rpm, double deg) {
        double speed = rpm * Math.PI / 30;
        return -181.3
                + 379.36 * AIR_G
                + (21.91 - 0.85 * AIR_FUEL_RATIO) * AIR_FUEL_RATIO
                + (0.26 - 0.0028 * deg) * deg
                + (0.027 - 0.000107 * speed + 0.00048 * deg) * speed
                + (2.55 - 0.05 * deg) * deg * AIR_G;
    }

    private static double[] torqueNm(double[] rpm, double deg) {
        return DoubleStream.of(rpm).map(at -> torqueNm(at, deg)).toArray();
    }

    private static double[] band(double... advanceDeg) {
        return DoubleStream.of(advanceDeg).map(deg -> torqueNm(2500, deg)).toArray();
    }

    @ParameterizedTest
    @ValueSource(doubles = {27.5, 30, 32})
    void averagesGiveThePublishedOptimum(double expectedDeg) {
        SparkFit fit = SparkFit.of(ADVANCE_DEG, band(ADVANCE_DEG), Advance.ofDeg(expectedDeg));
        assertThat(fit.best().deg()).isCloseTo(BEST_DEG[1], within(FIT_DEG));
        assertThat(fit.best().ninety().contains(BEST_DEG[1])).isTrue();
        assertThat(fit.best().isBracketed()).isTrue();
        assertThat(fit.leastDeg(0.5)).isCloseTo(LEAST_HALF_PERCENT_DEG, within(2 * FIT_DEG));
        assertThat(fit.leftPercent(LEAST_HALF_PERCENT_DEG)).isCloseTo(0.5, within(0.1));
    }

    @Test
    void torqueBySpeedGivesThePublishedOptimaOverSpeed() {
        double[][] torqueNm =
                DoubleStream.of(ADVANCE_DEG).mapToObj(deg -> torqueNm(RPM, deg)).toArray(double[][]::new);
        SparkFit fit = SparkFit.of(RPM, ADVANCE_DEG, torqueNm, Advance.ofDeg(28));
        for (int row = 0; row < RPM.length; row++) {
            SparkFit.Peak peak = fit.bySpeed().get(row);
            assertThat(peak.deg()).isCloseTo(BEST_DEG[row], within(FIT_DEG));
            assertThat(peak.ninety().contains(BEST_DEG[row])).isTrue();
            assertThat(peak.isBracketed()).isTrue();
        }
        assertThat(fit.best().deg())
                .isCloseTo(DoubleStream.of(BEST_DEG).average().orElseThrow(), within(FIT_DEG));
    }

    @Test
    void anotherUnitOfTorqueGivesTheSameFit() {
        double[] poundFeet = DoubleStream.of(band(ADVANCE_DEG))
                .map(nm -> nm / 1.3558179483314003)
                .toArray();
        SparkFit fit = SparkFit.of(ADVANCE_DEG, poundFeet, Advance.ofDeg(28));
        SparkFit same = SparkFit.of(ADVANCE_DEG, band(ADVANCE_DEG), Advance.ofDeg(28));
        assertThat(fit.best().deg()).isCloseTo(same.best().deg(), within(1e-9));
        assertThat(fit.scatterPercent()).isCloseTo(same.scatterPercent(), within(1e-9));
    }

    /** A day usually loses 0.015 % a pull, give or take 0.012: one that loses 0.08 is believed in part, and does not move the peak. */
    @Test
    void aDriftOfTheDayIsTakenOutAsFarAsItIsUsual() {
        assertThat(sinking(0).driftPercent()).isGreaterThan(-0.0145);
        assertThat(sinking(0.0008).driftPercent()).isBetween(-0.04, -0.018);
        assertThat(sinking(0.0008).best().deg()).isCloseTo(sinking(0).best().deg(), within(FIT_DEG));
    }

    private static SparkFit sinking(double shareAPull) {
        double[][] torqueNm = new double[ADVANCE_DEG.length][];
        for (int pull = 0; pull < torqueNm.length; pull++) {
            double left = 1 - shareAPull * pull;
            torqueNm[pull] = DoubleStream.of(torqueNm(RPM, ADVANCE_DEG[pull]))
                    .map(nm -> nm * left)
                    .toArray();
        }
        return SparkFit.of(RPM, ADVANCE_DEG, torqueNm, Advance.ofDeg(28));
    }

    @Test
    void aSweepThatHasNotTurnedOverIsNotBracketed() {
        double[] rising = {20, 22, 24, 26};
        SparkFit.Peak peak =
                SparkFit.of(rising, band(rising), Advance.ofDeg(28)).best();
        assertThat(peak.isBracketed()).isFalse();
        double[] falling = {38, 36, 34};
        assertThat(SparkFit.of(falling, band(falling), Advance.ofDeg(28)).best().isBracketed())
                .isFalse();
    }

    @Test
    void whatCannotBeFittedIsRefused() {
        Advance expected = Advance.ofDeg(28);
        double[] one = {20};
        assertThatIllegalArgumentException().isThrownBy(() -> SparkFit.of(new double[0], new double[0], expected));
        assertThatIllegalArgumentException().isThrownBy(() -> SparkFit.of(one, new double[] {1, 2}, expected));
        assertThatIllegalArgumentException().isThrownBy(() -> SparkFit.of(one, new double[] {0}, expected));
        assertThatIllegalArgumentException().isThrownBy(() -> SparkFit.of(one, new double[] {Double.NaN}, expected));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SparkFit.of(new double[] {Double.NaN}, new double[] {150}, expected));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SparkFit.of(RPM, one, new double[][] {{150, 150}}, expected));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SparkFit.of(one, new double[] {Double.POSITIVE_INFINITY}, expected));
    }
}
