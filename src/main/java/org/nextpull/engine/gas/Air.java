package org.nextpull.engine.gas;

/** Dry air: 78.084 % nitrogen, 20.946 % oxygen, the rest taken as argon, by volume (US Standard Atmosphere 1976). */
public final class Air {
    /** Molar mass in kg/mol. */
    public static final double KG_PER_MOL = 28.9647e-3;
    /** Specific gas constant in J/(kg.K). */
    public static final double GAS_CONSTANT = 287.055;

    /** Specific heat at constant pressure in J/(kg.K). */
    static final double HEAT_CAPACITY = 1005;

    private static final double N2 = 0.78084;
    private static final double O2 = 0.20946;

    private Air() {}

    /** Adds dry air, by mass in kg. */
    static GasMixture.Builder addTo(GasMixture.Builder builder, double kilograms) {
        double amount = kilograms / KG_PER_MOL;
        return builder.add(Species.N2, amount * N2)
                .add(Species.O2, amount * O2)
                .add(Species.AR, amount * (1 - N2 - O2));
    }

    /** Adds what is left of dry air when all its oxygen is used, by mass in kg of the air before. */
    static GasMixture.Builder addInertTo(GasMixture.Builder builder, double kilograms) {
        double amount = kilograms / KG_PER_MOL;
        return builder.add(Species.N2, amount * N2).add(Species.AR, amount * (1 - N2 - O2));
    }
}
