package org.nextpull.fuel;

import java.util.Optional;
import java.util.OptionalDouble;

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
        OptionalDouble perVolume =
                density.isPresent() ? OptionalDouble.of(perKilogram * density.getAsDouble()) : OptionalDouble.empty();
        return Optional.of(new EnergyContent(perKilogram, perVolume, perKilogram / (1 + ratio), perKilogram / ratio));
    }
}
