package org.nextpull.fuel;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What changes when one fuel takes the place of another at the same air.
 *
 * @param flow how much more of it is needed
 * @param coolingKelvins cooling of the charge in K if all of it evaporates; empty where the latent heat is not known
 * @param coolingAgainstKelvins the same with the other fuel
 * @param energyRatio dimensionless: heat from a kilogram of air burnt exactly, over that with the other fuel; empty where a heating value
 *     is not known
 */
public record FuelSwap(
        FlowComparison flow,
        OptionalDouble coolingKelvins,
        OptionalDouble coolingAgainstKelvins,
        OptionalDouble energyRatio) {

    /**
     * One fuel at its lambda in place of another at its own.
     *
     * @throws IllegalArgumentException where one of them needs no air, such as water
     */
    public static FuelSwap between(FuelDose dose, FuelDose against) {
        Optional<FuelFacts.EnergyContent> mine = FuelFacts.EnergyContent.of(dose.fuel());
        Optional<FuelFacts.EnergyContent> other = FuelFacts.EnergyContent.of(against.fuel());
        return new FuelSwap(
                FlowComparison.between(dose, against),
                dose.coolingKelvins(1),
                against.coolingKelvins(1),
                mine.isPresent() && other.isPresent()
                        ? OptionalDouble.of(
                                mine.get().perKilogramOfAir() / other.get().perKilogramOfAir())
                        : OptionalDouble.empty());
    }

    /** Each fuel at the lambda that commonly makes most power on it; empty where one of them is not known. */
    public static Optional<FuelSwap> atBestPower(Fuel fuel, Fuel against) {
        boolean known = fuel.value(FuelProperty.BEST_POWER_LAMBDA).isPresent()
                && against.value(FuelProperty.BEST_POWER_LAMBDA).isPresent();
        return known
                ? Optional.of(between(FuelDose.atBestPower(fuel), FuelDose.atBestPower(against)))
                : Optional.empty();
    }
}
