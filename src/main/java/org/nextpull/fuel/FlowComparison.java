package org.nextpull.fuel;

import java.util.OptionalDouble;

/**
 * How much of one fuel an engine needs against another, with the same air: (AFR2 lambda2) / (AFR1 lambda1) by mass.
 *
 * @param dose the fuel asked about
 * @param against the fuel it is compared with
 * @param massRatio kg for each kg of the other fuel, positive
 * @param volumeRatio litres for each litre of the other fuel; empty where a density is not known
 * @param areaRatio area of a jet or nozzle over that for the other fuel at equal pressure across it: mass flow goes with the area and
 *     the root of the density, viscosity aside; empty where a density is not known
 */
public record FlowComparison(
        FuelDose dose, FuelDose against, double massRatio, OptionalDouble volumeRatio, OptionalDouble areaRatio) {

    /**
     * One fuel at its lambda beside another at its own.
     *
     * @throws IllegalArgumentException where one of them needs no air, such as water
     */
    public static FlowComparison between(FuelDose dose, FuelDose against) {
        double mass = dose.perKilogramOfAir() / against.perKilogramOfAir();
        OptionalDouble mine = dose.fuel().density();
        OptionalDouble other = against.fuel().density();
        if (mine.isEmpty() || other.isEmpty()) {
            return new FlowComparison(dose, against, mass, OptionalDouble.empty(), OptionalDouble.empty());
        }
        double heavier = mine.getAsDouble() / other.getAsDouble();
        return new FlowComparison(
                dose, against, mass, OptionalDouble.of(mass / heavier), OptionalDouble.of(mass / Math.sqrt(heavier)));
    }

    /**
     * Both fuels at the lambda that commonly makes most power on each, lambda 1 where that is not known.
     *
     * @throws IllegalArgumentException where one of them needs no air, such as water
     */
    public static FlowComparison atBestPower(Fuel fuel, Fuel against) {
        return between(FuelDose.atBestPower(fuel), FuelDose.atBestPower(against));
    }

    /** Diameter of a round jet over that for the other fuel: the root of the area ratio; empty where a density is not known. */
    public OptionalDouble diameterRatio() {
        return areaRatio.isPresent() ? OptionalDouble.of(Math.sqrt(areaRatio.getAsDouble())) : OptionalDouble.empty();
    }
}
