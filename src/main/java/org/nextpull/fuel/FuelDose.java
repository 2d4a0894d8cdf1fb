package org.nextpull.fuel;

import java.util.OptionalDouble;
import org.nextpull.unit.Lambda;

/**
 * A fuel at a lambda: how much of it goes with a kilogram of air.
 *
 * @param fuel a fuel that burns
 * @param lambda the mixture
 */
public record FuelDose(Fuel fuel, Lambda lambda) {
    /** Specific heat of liquid fuel in J/(kg.K); petrol and alcohols lie between 2,200 and 2,600 (from memory). */
    private static final double LIQUID_HEAT_CAPACITY = 2400;

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

    /**
     * How far evaporating fuel cools the charge in K when all of the heat comes from the charge: dT = x (F/A) h / (cp + (F/A) c), with
     * the evaporated part x, the heat of evaporation h, the specific heats cp of air and c of liquid fuel (engine handbook, Heywood 1988,
     * section 6.2, from memory). An upper bound: hot ports and walls give part of the heat. Empty where the latent heat of the fuel is
     * not known.
     *
     * @param evaporatedPart fraction of the fuel that evaporates before the inlet valve closes, 0 to 1
     * @throws IllegalArgumentException where the latent heat is known of what needs no air, such as water
     */
    public OptionalDouble coolingKelvins(double evaporatedPart) {
        OptionalDouble latent = fuel.value(FuelProperty.LATENT_HEAT);
        if (latent.isEmpty()) {
            return OptionalDouble.empty();
        }
        double dose = perKilogramOfAir();
        double heat = evaporatedPart * dose * latent.getAsDouble();
        return OptionalDouble.of(heat / (DryAir.HEAT_CAPACITY + dose * LIQUID_HEAT_CAPACITY));
    }
}
