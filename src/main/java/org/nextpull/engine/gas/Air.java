package org.nextpull.engine.gas;

import org.nextpull.fuel.DryAir;

/** {@link DryAir} as a gas that burns: what is neither nitrogen nor oxygen is taken as argon, since neither argon nor carbon dioxide does. */
public final class Air {
    /** Molar mass in kg/mol. */
    public static final double KG_PER_MOL = 28.9647e-3;
    /** Specific gas constant in J/(kg.K). */
    public static final double GAS_CONSTANT = 287.055;

    private static final double REST = 1 - DryAir.NITROGEN - DryAir.OXYGEN;

    private Air() {}

    /** Adds dry air, by mass in kg. */
    static GasMixture.Builder addTo(GasMixture.Builder builder, double kilograms) {
        double amount = kilograms / KG_PER_MOL;
        return builder.add(Species.N2, amount * DryAir.NITROGEN)
                .add(Species.O2, amount * DryAir.OXYGEN)
                .add(Species.AR, amount * REST);
    }

    /** Adds what is left of dry air when all its oxygen is used, by mass in kg of the air before. */
    static GasMixture.Builder addInertTo(GasMixture.Builder builder, double kilograms) {
        double amount = kilograms / KG_PER_MOL;
        return builder.add(Species.N2, amount * DryAir.NITROGEN).add(Species.AR, amount * REST);
    }
}
