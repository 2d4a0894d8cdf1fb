package org.nextpull.engine.bench;

import org.nextpull.math.Normal;

/**
 * A knock sensor: counts cycles that knock, and gives a level above the noise of the engine. Cycles differ, so some knock before the
 * mean cycle does: the logarithm of a cycle's autoignition integral is taken as normal around the mean cycle's.
 */
final class KnockSensor {
    private static final double CYCLE_SPREAD = 0.05;
    private static final double BACKGROUND = 0.6;
    private static final double BACKGROUND_PER_RPM = 1.6e-4;
    private static final double LEVEL_AT_ONSET = 3;
    private static final double LEVEL_GROWTH = 5;
    private static final double LEVEL_SCATTER = 0.12;

    private KnockSensor() {}

    /** Probability that a cycle knocks. */
    static double probability(double integral) {
        return integral <= 0 ? 0 : Normal.below(Math.log(integral) / CYCLE_SPREAD);
    }

    /** Level in the sensor's own unit. */
    static double level(double rpm, double integral, Noise noise) {
        double background = BACKGROUND + BACKGROUND_PER_RPM * rpm;
        double knock = LEVEL_AT_ONSET * Math.exp(LEVEL_GROWTH * (integral - 1));
        return (background + knock) * Math.exp(noise.normal(LEVEL_SCATTER));
    }
}
