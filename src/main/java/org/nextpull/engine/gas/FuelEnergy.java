package org.nextpull.engine.gas;

/**
 * Energies of a fuel.
 *
 * @param lowerHeatingValue heat of combustion to water vapour in J/kg, above 0
 * @param latentHeat heat of evaporation in J/kg, above 0
 */
record FuelEnergy(double lowerHeatingValue, double latentHeat) {
    /**
     * Accepts any positive heats.
     *
     * @throws IllegalArgumentException when one of them is 0, negative or NaN
     */
    public FuelEnergy {
        if (!(lowerHeatingValue > 0) || !(latentHeat > 0)) {
            throw new IllegalArgumentException("not a fuel: heat " + lowerHeatingValue + ", latent " + latentHeat);
        }
    }
}
