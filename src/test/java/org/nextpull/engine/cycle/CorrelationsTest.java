package org.nextpull.engine.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.engine.gas.Gas;

class CorrelationsTest {
    private static final Cylinder CYLINDER = new Cylinder(0.086, 0.086, new Cylinder.Drive(11, 3.5));
    private static final double ATMOSPHERE = 101325;

    /** 1 - exp(-5 ((t - t0)/d)^3): the function with the usual a = 5, m = 2 (Heywood, section 9.2, from memory). */
    @Test
    void wiebeBurnsNothingAtTheSparkAndTheStatedFractionAtItsEnd() {
        Wiebe burn = new Wiebe(-25, 60);
        assertThat(burn.fraction(-25)).isZero();
        assertThat(burn.fraction(-40)).isZero();
        assertThat(burn.fraction(35)).isCloseTo(1 - Math.exp(-5), within(1e-15));
        assertThat(burn.fraction(5)).isCloseTo(1 - Math.exp(-5 * 0.125), within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 0.9})
    void wiebeFindsTheAngleOfAFraction(double fraction) {
        Wiebe burn = new Wiebe(-18, 47);
        assertThat(burn.fraction(burn.angleOf(fraction))).isCloseTo(fraction, within(1e-13));
    }

    @Test
    void wiebeRateIsTheSlopeOfTheFraction() {
        Wiebe burn = new Wiebe(-18, 47);
        double slope = (burn.fraction(5.001) - burn.fraction(4.999)) / 0.002;
        assertThat(burn.rate(5, burn.fraction(5))).isCloseTo(slope, within(1e-8));
    }

    @Test
    void theSliderCrankSpansTheCompressionRatio() {
        SliderCrank crank = new SliderCrank(CYLINDER);
        assertThat(crank.volume(180) / crank.volume(0)).isCloseTo(11, within(1e-12));
        assertThat(crank.volume(180) - crank.volume(0)).isCloseTo(CYLINDER.sweptVolume(), within(1e-15));
        assertThat(crank.volume(-90)).isCloseTo(crank.volume(90), within(1e-18));
        // a rod of finite length holds the piston below half stroke at 90 degrees
        assertThat(crank.volume(90)).isGreaterThan(crank.volume(0) + CYLINDER.sweptVolume() / 2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-120, -30, 15, 90, 135})
    void theVolumeRateIsTheSlopeOfTheVolume(double deg) {
        SliderCrank crank = new SliderCrank(CYLINDER);
        double slope = (crank.volume(deg + 0.01) - crank.volume(deg - 0.01)) / 0.02;
        assertThat(crank.volumeRate(deg)).isCloseTo(slope, within(1e-12));
    }

    /** The published formula worked by hand: ON 100, 1 atm, 1000 K: 17.68 ms x e^3.8. */
    @Test
    void douaudEyzatDelayIsTheFormula() {
        double delay = 1 / CycleEquations.KnockDelay.ofOctane(100).rate(new Gas.State(ATMOSPHERE, 1000));
        assertThat(delay).isCloseTo(0.01768 * 44.7011845, within(1e-8));
        double higher = 1 / CycleEquations.KnockDelay.ofOctane(95).rate(new Gas.State(40 * ATMOSPHERE, 850));
        assertThat(higher)
                .isCloseTo(
                        0.01768 * Math.pow(0.95, 3.402) * Math.pow(40, -1.7) * Math.exp(3800.0 / 850), within(1e-12));
    }

    /** The published formula worked by hand in its own units (kPa, K, m/s). */
    @Test
    void woschniCoefficientIsTheFormula() {
        ClosedCycle.Filling filling = new ClosedCycle.Filling(new Gas.State(1e5, 350), 5.4e-4, -130);
        Woschni woschni = new Woschni(CYLINDER, 3000, filling);
        double motored = woschni.motoredPressure(6e-5);
        assertThat(motored).isCloseTo(1e5 * Math.pow(9, 1.33), within(1e-3));
        double velocity = 2.28 * CYLINDER.pistonSpeed(3000)
                + 0.00324 * CYLINDER.sweptVolume() * 350 / (1e5 * 5.4e-4) * (50e5 - motored);
        double expected =
                3.26 * Math.pow(0.086, -0.2) * Math.pow(5000, 0.8) * Math.pow(2300, -0.55) * Math.pow(velocity, 0.8);
        assertThat(woschni.coefficient(new Gas.State(50e5, 2300), motored))
                .isCloseTo(expected, within(1e-9 * expected));
    }

    /** Full-load firing heat transfer coefficients reach 1 to 4 kW/(m2.K) (Heywood, section 12.6, from memory). */
    @Test
    void woschniCoefficientHasTheSizeOfEngines() {
        Woschni woschni = new Woschni(CYLINDER, 4000, new ClosedCycle.Filling(new Gas.State(1e5, 350), 5.4e-4, -130));
        assertThat(woschni.coefficient(new Gas.State(60e5, 2500), 20e5)).isBetween(1000.0, 4000.0);
    }

    @Test
    void chenFlynnAddsItsTerms() {
        ChenFlynn friction = new ChenFlynn(40e3, 0.005, new ChenFlynn.PerSpeed(9e3, 90));
        double expected = 40e3 + 0.005 * 70e5 + 9e3 * 12 + 90 * 144;
        assertThat(friction.pascals(new ClosedCycle.PeakPressure(70e5, 14), 12, 1))
                .isCloseTo(expected, within(1e-6));
        assertThat(friction.pascals(new ClosedCycle.PeakPressure(70e5, 14), 12, 1.3))
                .isGreaterThan(expected);
    }

    /** The correlation's own exponents: eight times the piston speed doubles the angle, half the flame speed takes 2^(2/3). */
    @Test
    void burnDurationGrowsWithSpeedAndSlowFlames() {
        BurnDuration duration = new BurnDuration(40_000);
        BurnDuration.Chamber chamber = new BurnDuration.Chamber(0.0086, new Gas.State(25e5, 750), 1);
        BurnDuration.Chamber slow = new BurnDuration.Chamber(0.0086, new Gas.State(25e5, 750), 0.5);
        double base = duration.degrees(CYLINDER, 1000, chamber, chamber);
        assertThat(duration.degrees(CYLINDER, 8000, chamber, chamber)).isCloseTo(2 * base, within(1e-9));
        assertThat(duration.degrees(CYLINDER, 1000, slow, slow)).isCloseTo(Math.cbrt(4) * base, within(1e-9));
    }

    /** A wider chamber of the same height burns longer, all but the development in proportion to the bore. */
    @Test
    void burnDurationGrowsWithTheWayOfTheFlame() {
        BurnDuration duration = new BurnDuration(40_000);
        BurnDuration.Chamber chamber = new BurnDuration.Chamber(0.0086, new Gas.State(25e5, 750), 1);
        Cylinder wide = new Cylinder(0.172, 0.086, CYLINDER.drive());
        double ratio =
                duration.degrees(wide, 1000, chamber, chamber) / duration.degrees(CYLINDER, 1000, chamber, chamber);
        assertThat(ratio).isCloseTo(1.9, within(0.02));
    }
}
