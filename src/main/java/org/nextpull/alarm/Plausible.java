package org.nextpull.alarm;

import org.nextpull.channel.Role;

/**
 * What a channel can read under full load. All ranges are common practice without a source, but for the end of the exhaust sensor's.
 *
 * @param low least reading of a live channel, in the project's unit
 * @param high greatest
 * @param byHighest whether the highest reading of the pull is held against the range, not the middle one
 * @param sensorEnds greatest value that a sensor can show at all
 */
record Plausible(double low, double high, boolean byHighest, double sensorEnds) {
    private static final double ZERO_CELSIUS_K = 273.15;

    /** The reference table of type K thermocouples ends here, in degC: NIST Monograph 175 (from memory). */
    private static final double TYPE_K_ENDS_C = 1372;

    static Plausible of(Role role) {
        return switch (role) {
            // spark-ignition engines at full load run from 0.65 to 1.1; beyond 1.5 petrol does not burn
            case LAMBDA -> middle(0.55, 1.5);
            // even a cold manifold and a slow thermocouple pass 200 degC within a pull
            case EXHAUST_TEMPERATURE ->
                new Plausible(
                        200 + ZERO_CELSIUS_K, TYPE_K_ENDS_C + ZERO_CELSIUS_K, true, TYPE_K_ENDS_C + ZERO_CELSIUS_K);
            // -40 degC is what an open thermistor reads
            case COOLANT_TEMPERATURE, OIL_TEMPERATURE -> middle(-30 + ZERO_CELSIUS_K, 200 + ZERO_CELSIUS_K);
            case INLET_AIR_TEMPERATURE -> middle(-35 + ZERO_CELSIUS_K, 150 + ZERO_CELSIUS_K);
            // an open throttle leaves the manifold near the air outside, on high ground too
            case MANIFOLD_PRESSURE -> middle(45e3, 600e3);
            case INJECTOR_DUTY -> middle(0.02, 1.5);
            case OIL_PRESSURE, FUEL_PRESSURE -> middle(0, Double.POSITIVE_INFINITY);
            default -> middle(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        };
    }

    private static Plausible middle(double low, double high) {
        return new Plausible(low, high, false, Double.POSITIVE_INFINITY);
    }

    boolean holds(double reading) {
        return reading >= low && reading <= high;
    }
}
