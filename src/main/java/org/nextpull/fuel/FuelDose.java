package org.nextpull.fuel;

import org.nextpull.unit.Lambda;

/**
 * A fuel at a lambda: how much of it goes with a kilogram of air.
 *
 * @param fuel a fuel that burns
 * @param lambda the mixture
 */
public record FuelDose(Fuel fuel, Lambda lambda) {
    /** The fuel at the lambda that commonly makes most power on it; at lambda 1 where none is known. */
    public static FuelDose atBestPower(Fuel fuel) {
        return new FuelDose(
                fuel, Lambda.of(fuel.value(FuelProperty.BEST_POWER_LAMBDA).orElse(1)));
    }

    /** Air over fuel by mass. */
    public double airFuelRatio() {
        return fuel.scale().airFuelRatio(lambda);
    }

    /** Fuel in kg for a kg of air. */
    public double perKilogramOfAir() {
        return 1 / airFuelRatio();
    }
}
