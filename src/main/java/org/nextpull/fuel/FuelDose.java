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

    /**
     * Kilograms of air for a kilogram of fuel, positive.
     *
     * @throws IllegalArgumentException for what needs no air, such as water
     */
    public double airFuelRatio() {
        return fuel.scale().airFuelRatio(lambda);
    }

    /**
     * Kilograms of fuel for a kilogram of air, positive.
     *
     * @throws IllegalArgumentException for what needs no air, such as water
     */
    public double perKilogramOfAir() {
        return 1 / airFuelRatio();
    }
}
