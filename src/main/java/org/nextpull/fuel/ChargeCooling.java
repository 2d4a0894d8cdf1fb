package org.nextpull.fuel;

import java.util.OptionalDouble;

/**
 * How far evaporating fuel cools the charge when all of the heat comes from the charge: dT = x (F/A) h / (cp + (F/A) c), with the
 * evaporated part x, the heat of evaporation h, the specific heats cp of air and c of liquid fuel (engine handbook, Heywood 1988,
 * section 6.2, from memory). An upper bound: hot ports and walls give part of the heat.
 */
final class ChargeCooling {
    /** Specific heat of liquid fuel in J/(kg.K); petrol and alcohols lie between 2,200 and 2,600 (from memory). */
    private static final double LIQUID_HEAT_CAPACITY = 2400;

    private ChargeCooling() {}

    /**
     * Cooling in K; empty where the latent heat of the fuel is not known.
     *
     * @param dose fuel and mixture
     * @param evaporatedPart fraction of the fuel that evaporates before the inlet valve closes, 0 to 1
     * @throws IllegalArgumentException where the latent heat is known of what needs no air, such as water
     */
    public static OptionalDouble kelvins(FuelDose dose, double evaporatedPart) {
        OptionalDouble latent = dose.fuel().value(FuelProperty.LATENT_HEAT);
        if (latent.isEmpty()) {
            return OptionalDouble.empty();
        }
        double fuel = dose.perKilogramOfAir();
        double heat = evaporatedPart * fuel * latent.getAsDouble();
        return OptionalDouble.of(heat / (DryAir.HEAT_CAPACITY + fuel * LIQUID_HEAT_CAPACITY));
    }
}
