package org.nextpull.fuel;

/**
 * Dry air by the composition of the standard atmosphere (ISO 2533, from memory; US Standard Atmosphere 1976): mole fractions of oxygen,
 * nitrogen, argon and carbon dioxide. The rounder "O2 + 3.76 N2" gives air-fuel ratios 0.7 % lower.
 */
public final class DryAir {
    /** Mole fraction of oxygen. */
    public static final double OXYGEN = 0.20946;
    /** Mole fraction of nitrogen. */
    public static final double NITROGEN = 0.78084;

    private static final double ARGON = 0.00934;
    private static final double CARBON_DIOXIDE = 0.00036;
    private static final double ARGON_GRAMS_PER_MOLE = 39.95;

    /** Grams of air that hold one mole of oxygen molecules: 138.288. */
    static final double GRAMS_PER_MOLE_OXYGEN = gramsPerMole() / OXYGEN;

    /** Specific heat of air at constant pressure near 300 K, J/(kg.K). */
    public static final double HEAT_CAPACITY = 1005;

    private DryAir() {}

    private static double gramsPerMole() {
        double oxygen = Element.OXYGEN.gramsPerMole();
        return OXYGEN * 2 * oxygen
                + NITROGEN * 2 * Element.NITROGEN.gramsPerMole()
                + ARGON * ARGON_GRAMS_PER_MOLE
                + CARBON_DIOXIDE * (Element.CARBON.gramsPerMole() + 2 * oxygen);
    }
}
