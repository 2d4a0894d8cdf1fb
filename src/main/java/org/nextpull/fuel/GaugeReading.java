package org.nextpull.fuel;

import org.nextpull.unit.Lambda;

/**
 * What a gauge shows while a fuel burns, and what it means.
 *
 * @param shown air-fuel ratio on the gauge
 * @param scale what the gauge is set to
 * @param fuel what burns
 */
public record GaugeReading(double shown, LambdaScale scale, Fuel fuel) {
    /** What a gauge of that scale shows at a lambda. */
    public static GaugeReading at(Lambda lambda, LambdaScale scale, Fuel fuel) {
        return new GaugeReading(scale.airFuelRatio(lambda), scale, fuel);
    }

    public Lambda lambda() {
        return scale.lambda(shown);
    }

    /** Air over fuel by mass as it truly is. */
    public double airFuelRatio() {
        return fuel.scale().airFuelRatio(lambda());
    }
}
