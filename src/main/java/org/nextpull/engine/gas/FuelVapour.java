package org.nextpull.engine.gas;

/**
 * Specific heat of fuel vapour at constant pressure, {@code cp = b0 + b1 T + b2 T^2} in J/(kg.K), 300 to 1000 K: isooctane and
 * ethanol, mixed by the fuel's share of alcohol. Fitted to handbook values at 300, 600 and 1000 K (from memory: isooctane 1.65,
 * 2.8 and 3.8, ethanol 1.42, 2.4 and 3.15 kJ/(kg.K)). Fuel is a fifteenth of a charge or less, a tenth with ethanol.
 */
final class FuelVapour {
    static final int TERMS = 3;
    private static final double[] HYDROCARBON = {160, 5.55, -1.9e-3};
    private static final double[] ALCOHOL = {68.6, 5.134, -2.052e-3};

    private FuelVapour() {}

    static double coefficient(EngineFuel fuel, int power) {
        double alcohol = fuel.alcoholShare();
        return alcohol * ALCOHOL[power] + (1 - alcohol) * HYDROCARBON[power];
    }
}
