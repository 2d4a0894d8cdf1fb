package org.nextpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.nextpull.unit.Span;

class CurvaturePriorTest {
    private static final CurvaturePrior LEVEL = CurvaturePrior.between(Span.of(2e-4, 8e-4), 0.25);

    @Test
    void allCurvaturesWithinTheSpanAreEquallyLikely() {
        assertThat(LEVEL.logDensity(Math.log(2e-4))).isZero();
        assertThat(LEVEL.logDensity(Math.log(4e-4))).isZero();
        assertThat(LEVEL.logDensity(Math.log(8e-4))).isZero();
    }

    @Test
    void beyondTheSpanTheDensityFallsLikeANormalOne() {
        assertThat(LEVEL.logDensity(Math.log(8e-4) + 0.25)).isCloseTo(-0.5, within(1e-12));
        assertThat(LEVEL.logDensity(Math.log(2e-4) - 0.50)).isCloseTo(-2.0, within(1e-12));
    }

    @Test
    void aNormalBeliefIsASpanThatIsAPoint() {
        CurvaturePrior normal = CurvaturePrior.normal(new Belief(-8, 0.5));
        assertThat(normal.logDensity(-7)).isCloseTo(-2, within(1e-12));
        assertThat(normal.reach(2)).isEqualTo(Span.of(-9, -7));
        assertThat(normal.sd()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void aFactorMovesTheWholeBelief() {
        CurvaturePrior twice = LEVEL.times(2);
        assertThat(twice.logDensity(Math.log(8e-4))).isZero();
        assertThat(twice.logDensity(Math.log(2e-4))).isNegative();
        assertThat(twice.sd()).isCloseTo(LEVEL.sd(), within(1e-12));
    }

    @Test
    void tailsOfNoWidthAreRefused() {
        assertThatThrownBy(() -> new CurvaturePrior(Span.of(-9, -7), 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * The fall of torque in published curves lies where no curvature is preferred: 1 % at 5 deg and 3 to 4 % at 10 deg (Heywood, from
     * memory); the flattest of the regression of Crossley and Cook (1991), 1.6e-4, within one and a half sds of the tail.
     */
    @Test
    void publishedCurvesAreLikelyUnderTheTimingPrior() {
        CurvaturePrior timing = SweepPriors.timing(28).curvature();
        for (double k : new double[] {0.01 / 25, 0.03 / 100, 0.04 / 100}) {
            assertThat(timing.logDensity(Math.log(k))).isZero();
        }
        assertThat(timing.logDensity(Math.log(1.6e-4))).isGreaterThan(-1.5 * 1.5 / 2);
    }
}
