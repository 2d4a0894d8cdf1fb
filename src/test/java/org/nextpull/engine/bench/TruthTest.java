package org.nextpull.engine.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.ExampleEngines;
import org.nextpull.engine.ModelEngine;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.engine.gas.TestFuels;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

class TruthTest {
    private static final Span BAND = Span.of(3500, 6500);
    private static final ModelEngine ENGINE =
            ModelEngine.of(ExampleEngines.hillClimb()).value().orElseThrow();
    private static final OperatingPoint POINT = new OperatingPoint(
            4000, Advance.ofDeg(20), Lambda.of(0.88), TestFuels.E10, OperatingPoint.Surroundings.reference());
    private static final TruthFinder.Truth TRUTH = TruthFinder.find(ENGINE, POINT, BAND, 500);

    private static double mean(double deg) {
        return FullLoadCurve.of(ENGINE, SparkMap.flat(deg), POINT, BAND)
                .value()
                .orElseThrow()
                .meanTorque(BAND);
    }

    @Test
    void noAdvanceBeatsTheTrueOne() {
        double top = mean(TRUTH.peak().deg());
        for (double deg = 10; deg <= 45; deg += 0.5) {
            assertThat(mean(deg)).isLessThanOrEqualTo(top * (1 + 1e-6));
        }
    }

    @Test
    void theLeastAdvanceNearThePeakCostsAFifthOfAPercent() {
        assertThat(mean(TRUTH.near().deg()) / mean(TRUTH.peak().deg())).isCloseTo(0.998, within(5e-5));
        assertThat(TRUTH.near().deg()).isLessThan(TRUTH.peak().deg());
    }

    @Test
    void theRowsSurroundTheBand() {
        assertThat(TRUTH.rows()).hasSize(7);
        double first = TRUTH.rows().get(0).peak().deg();
        double last = TRUTH.rows().get(6).peak().deg();
        assertThat(first).isLessThan(TRUTH.peak().deg());
        assertThat(last).isGreaterThan(TRUTH.peak().deg());
    }

    @Test
    void theShareOfKnockingCyclesIsNormalInTheLogarithm() {
        assertThat(KnockSensor.probability(1)).isCloseTo(0.5, within(1e-7));
        assertThat(KnockSensor.probability(0)).isZero();
    }
}
