package org.nextpull.fuel;

import org.nextpull.unit.Pressure;

/**
 * What an injector was measured to flow when held open.
 *
 * @param kilogramsPerSecond mass flow in kg/s, positive
 * @param across pressure difference over it, positive
 * @param testDensity density of the liquid it was measured with, kg/m3, positive
 */
public record InjectorRating(double kilogramsPerSecond, Pressure across, double testDensity) {
    /** Usual test liquid in place of petrol: n-heptane, 684 kg/m3 (from memory); many sheets name another. */
    public static final double USUAL_TEST_DENSITY = 684;

    /**
     * Accepts any positive flow, pressure and density.
     *
     * @throws IllegalArgumentException when one of them is 0, negative or NaN
     */
    public InjectorRating {
        if (!(kilogramsPerSecond > 0) || !(across.pascals() > 0) || !(testDensity > 0)) {
            throw new IllegalArgumentException("an injector rating needs positive flow, pressure and density");
        }
    }

    /**
     * From a flow by volume.
     *
     * @param cubicMetresPerSecond in m3/s, positive
     * @param testDensity density of the liquid it was measured with, kg/m3, positive
     * @throws IllegalArgumentException when flow, pressure or density is 0, negative or NaN
     */
    public static InjectorRating ofVolume(double cubicMetresPerSecond, Pressure across, double testDensity) {
        return new InjectorRating(cubicMetresPerSecond * testDensity, across, testDensity);
    }

    /**
     * Mass flow in kg/s held open on another liquid and pressure: with the root of both ratios, as through any orifice.
     *
     * @param acrossNow pressure difference over it, not negative
     * @param density of the liquid, kg/m3, not negative
     */
    public double flow(Pressure acrossNow, double density) {
        return kilogramsPerSecond * Math.sqrt(acrossNow.pascals() / across.pascals() * (density / testDensity));
    }
}
