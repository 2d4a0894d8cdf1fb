package org.nextpull.fuel;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Lambda;

/**
 * What one fuel says beside another: a row of a table of fuels.
 *
 * @param fuel the fuel
 * @param airFuelRatio kg of air that burn a kg of it exactly, from its elements
 * @param energy empty where the heating value is not known
 * @param coolingKelvins cooling of the charge in K at lambda 1 if all of the fuel evaporates; empty where the latent heat is not known
 * @param atEqualLambda flow against the other fuel with both at lambda 1
 * @param atBestPower flow against the other fuel with each at its own lambda of best power; empty where one of them is not known
 */
public record FuelFacts(
        Fuel fuel,
        double airFuelRatio,
        Optional<EnergyContent> energy,
        OptionalDouble coolingKelvins,
        FlowComparison atEqualLambda,
        Optional<FlowComparison> atBestPower) {

    /**
     * One fuel beside another.
     *
     * @throws IllegalArgumentException where one of them needs no air, such as water
     */
    public static FuelFacts of(Fuel fuel, Fuel against) {
        FuelDose dose = new FuelDose(fuel, Lambda.of(1));
        FlowComparison equal = FlowComparison.between(dose, new FuelDose(against, Lambda.of(1)));
        boolean known = fuel.value(FuelProperty.BEST_POWER_LAMBDA).isPresent()
                && against.value(FuelProperty.BEST_POWER_LAMBDA).isPresent();
        return new FuelFacts(
                fuel,
                fuel.stoichiometricAirFuelRatio(),
                EnergyContent.of(fuel),
                dose.coolingKelvins(1),
                equal,
                known ? Optional.of(FlowComparison.atBestPower(fuel, against)) : Optional.empty());
    }

    /**
     * Chemical energy by the lower heating value, in J. At equal air and lambda it is the energy for a kg of air that counts, and there
     * fuels differ by percents only.
     *
     * @param perKilogram J for a kg of fuel
     * @param perCubicMetre J for a m3 of fuel; empty where the density is not known
     * @param perKilogramOfMixture J for a kg of stoichiometric mixture
     * @param perKilogramOfAir J for a kg of air when the fuel is burnt exactly
     */
    public record EnergyContent(
            double perKilogram, OptionalDouble perCubicMetre, double perKilogramOfMixture, double perKilogramOfAir) {

        /** Empty where the heating value of the fuel is not known. */
        public static Optional<EnergyContent> of(Fuel fuel) {
            OptionalDouble heating = fuel.lowerHeatingValue();
            if (heating.isEmpty()) {
                return Optional.empty();
            }
            double perKilogram = heating.getAsDouble();
            double ratio = fuel.stoichiometricAirFuelRatio();
            OptionalDouble density = fuel.density();
            OptionalDouble perVolume = density.isPresent()
                    ? OptionalDouble.of(perKilogram * density.getAsDouble())
                    : OptionalDouble.empty();
            return Optional.of(
                    new EnergyContent(perKilogram, perVolume, perKilogram / (1 + ratio), perKilogram / ratio));
        }
    }
}
