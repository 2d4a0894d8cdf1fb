package org.nextpull.air;

import org.nextpull.unit.Pressure;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/**
 * Thermodynamic wet bulb by the energy balance of ASHRAE Handbook, Fundamentals 2017, chapter 1, equations 33 (above freezing) and 35
 * (ice on the bulb). A ventilated psychrometer reads within 3 % of the vapour pressure of this at low humidity.
 */
final class WetBulb {
    private static final int HALVINGS = 60;
    /** A wet bulb cannot fall further than this below the dry bulb in air of -40 to 60 degC. */
    private static final double LARGEST_DEPRESSION_K = 60;

    private WetBulb() {}

    /**
     * Humidity ratio in kg/kg of air with these two temperatures; negative where the wet bulb is lower than dry air could make it.
     *
     * @param dryBulb between the limits of {@link HylandWexler}
     * @param wetBulb not above the dry bulb
     * @param barometer total pressure, above the saturation pressure at the wet bulb
     */
    static double humidityRatio(Temperature dryBulb, Temperature wetBulb, Pressure barometer) {
        double t = dryBulb.celsius();
        double wet = wetBulb.celsius();
        double saturation = HylandWexler.saturationPressure(wetBulb).pascals();
        double saturated = AirState.MASS_RATIO * saturation / (barometer.pascals() - saturation);
        return wet >= 0
                ? ((2501 - 2.326 * wet) * saturated - 1.006 * (t - wet)) / (2501 + 1.86 * t - 4.186 * wet)
                : ((2830 - 0.24 * wet) * saturated - 1.006 * (t - wet)) / (2830 + 1.86 * t - 2.1 * wet);
    }

    /** Vapour pressure that belongs to a humidity ratio. */
    static Pressure vapourPressure(double humidityRatio, Pressure barometer) {
        return Pressure.ofPascals(barometer.pascals() * humidityRatio / (AirState.MASS_RATIO + humidityRatio));
    }

    /**
     * The wet bulb of air, by halving between the dry bulb and 60 K below it.
     *
     * @param air the air, not above saturation; its dry bulb below the boiling point at its barometer
     * @throws IllegalArgumentException where the temperature lies outside {@link HylandWexler#VALID_KELVINS}
     */
    static Temperature of(AirState air) {
        Span valid = HylandWexler.VALID_KELVINS;
        double high = air.temperature().kelvins();
        double low = Math.max(valid.low(), high - LARGEST_DEPRESSION_K);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (humidityRatio(air.temperature(), Temperature.ofKelvins(middle), air.barometer())
                    < air.humidityRatio()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Temperature.ofKelvins((low + high) / 2);
    }
}
