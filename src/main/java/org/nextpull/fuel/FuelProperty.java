package org.nextpull.fuel;

import org.nextpull.unit.Quantity;

/** A figure of a fuel that is looked up, not computed; kept in the unit of its quantity. */
public enum FuelProperty {
    /** At 15 to 20 degC; part volumes add up (ideal mixing). */
    DENSITY(Quantity.DENSITY, Mixing.OF_VOLUMES),
    LOWER_HEATING_VALUE(Quantity.SPECIFIC_ENERGY, Mixing.BY_MASS),
    /** Heat that evaporates the fuel. */
    LATENT_HEAT(Quantity.SPECIFIC_ENERGY, Mixing.BY_MASS),
    /** Research octane number; does not follow from the parts of a blend. */
    RESEARCH_OCTANE(Quantity.COUNT, Mixing.NONE),
    /** Motor octane number; does not follow from the parts of a blend. */
    MOTOR_OCTANE(Quantity.COUNT, Mixing.NONE),
    /** Stoichiometric ratio as handbooks and the trade print it, beside the one computed from the elements. */
    PRINTED_AIR_FUEL_RATIO(Quantity.AIR_FUEL_RATIO, Mixing.NONE),
    /** Lambda at which engines commonly make most power on it. */
    BEST_POWER_LAMBDA(Quantity.LAMBDA, Mixing.BY_MASS),
    /** Alcohol as a fraction of the volume. */
    ALCOHOL_BY_VOLUME(Quantity.FRACTION, Mixing.BY_VOLUME);

    private final Quantity quantity;
    private final Mixing mixing;

    FuelProperty(Quantity quantity, Mixing mixing) {
        this.quantity = quantity;
        this.mixing = mixing;
    }

    public Quantity quantity() {
        return quantity;
    }

    Mixing mixing() {
        return mixing;
    }

    /** How the figure of a blend follows from those of its parts. */
    enum Mixing {
        BY_MASS,
        BY_VOLUME,
        OF_VOLUMES,
        NONE
    }
}
