package org.nextpull.engine.gas;

/** An ideal gas of fixed composition. */
public interface Gas {
    /** Specific gas constant in J/(kg.K). */
    double gasConstant();

    /** Specific heat at constant volume in J/(kg.K), at a temperature in K. */
    double heatCapacity(double kelvins);

    /** Sensible specific internal energy in J/kg, zero at 298.15 K, at a temperature in K. */
    double internalEnergy(double kelvins);

    /**
     * State of a gas.
     *
     * @param pascals absolute pressure in Pa
     * @param kelvins temperature in K
     */
    public record State(double pascals, double kelvins) {}
}
