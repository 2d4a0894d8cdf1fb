package org.nextpull.air;

import org.nextpull.unit.Pressure;

/**
 * The standard atmosphere of ISO 2533 up to 11,000 m: pressure at an altitude, and the altitude at which it has a given pressure or
 * density. Altitudes are geopotential, in m. Constants and the formula of its lowest layer are from memory.
 */
final class StandardAtmosphere {
    private static final double SEA_LEVEL_PASCALS = 101_325;
    private static final double SEA_LEVEL_DENSITY = 1.225;
    private static final double SEA_LEVEL_KELVINS = 288.15;
    private static final double LAPSE_KELVINS_PER_METRE = 0.0065;
    private static final double GRAVITY = 9.80665;
    private static final double GAS_CONSTANT = 287.05287;
    private static final double EXPONENT = GRAVITY / (GAS_CONSTANT * LAPSE_KELVINS_PER_METRE);

    private StandardAtmosphere() {}

    /** Pressure at altitude 0, 101.325 kPa. */
    static Pressure seaLevelPressure() {
        return Pressure.ofPascals(SEA_LEVEL_PASCALS);
    }

    /**
     * Pressure at an altitude.
     *
     * @param altitudeMetres geopotential altitude in m; the layer reaches from -5,000 to 11,000 m, beyond which it is only continued
     * @throws IllegalArgumentException for NaN, and above 44,330 m, where the continued layer has no pressure any more
     */
    static Pressure pressureAt(double altitudeMetres) {
        double warmth = 1 - LAPSE_KELVINS_PER_METRE * altitudeMetres / SEA_LEVEL_KELVINS;
        return Pressure.ofPascals(SEA_LEVEL_PASCALS * Math.pow(warmth, EXPONENT));
    }

    /**
     * Altitude in m at which the standard atmosphere has that pressure; negative above 101.325 kPa.
     *
     * @param pressure from 22.6 kPa, the upper end of the layer, below which it is only continued; not negative
     */
    static double altitudeOf(Pressure pressure) {
        return altitude(Math.pow(pressure.pascals() / SEA_LEVEL_PASCALS, 1 / EXPONENT));
    }

    /** Density altitude in m: where the standard atmosphere is as dense as this air, moisture included. */
    static double densityAltitude(AirState air) {
        return altitude(Math.pow(air.density() / SEA_LEVEL_DENSITY, 1 / (EXPONENT - 1)));
    }

    private static double altitude(double warmth) {
        return SEA_LEVEL_KELVINS / LAPSE_KELVINS_PER_METRE * (1 - warmth);
    }
}
