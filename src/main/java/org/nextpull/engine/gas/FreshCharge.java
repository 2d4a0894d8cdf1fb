package org.nextpull.engine.gas;

import org.nextpull.unit.Lambda;

/**
 * Air, fuel and water vapour as they meet in the inlet.
 *
 * @param fuel the fuel
 * @param lambda mean air-fuel equivalence ratio
 * @param humidity water vapour per dry air, kg/kg
 */
public record FreshCharge(EngineFuel fuel, Lambda lambda, double humidity) {
    /** Mass of the mixture per mass of fuel. */
    public double massPerFuel() {
        return 1 + fuel.airPerFuel(lambda) * (1 + humidity);
    }

    /** Mole fraction of water vapour. */
    public double waterFraction() {
        double water = humidity / Species.H2O.molarMass() * Air.KG_PER_MOL;
        return water / (1 + water);
    }

    /** The mixture before it burns, all fuel evaporated. */
    public GasMixture fresh() {
        double air = fuel.airPerFuel(lambda);
        GasMixture.Builder builder = GasMixture.builder();
        Air.addTo(builder, air);
        return builder.add(Species.H2O, air * humidity / Species.H2O.molarMass())
                .addVapour(fuel, 1)
                .build();
    }
}
