package org.nextpull.air;

import org.nextpull.unit.Pressure;

/**
 * The standard atmosphere of ISO 2533 up to 11,000 m: pressure at an altitude, and the altitude at which it has a given pressure or
 * density. Altitudes are geopotential, in m.
 */
public final class StandardAtmosphere {
    private static final double SEA_LEVEL_PASCALS = 101_325;
    private static final double SEA_LEVEL_DENSITY = 1.225;
    private static final double SEA_LEVEL_KELVINS = 288.15;
    private static final double LAPSE_KELVINS_PER_METRE = 0.0065;
    private static final double GRAVITY = 9.80665;
    private static final double GAS_CONSTANT = 287.05287;
    private static final double EXPONENT = GRAVITY / (GAS_CONSTANT * LAPSE_KELVINS_PER_METRE);

    private StandardAtmosphere() {}

    public static Pressure seaLevelPressure() {
        return Pressure.ofPascals(SEA_LEVEL_PASCALS);
    }

    /** Pressure at an altitude from -5,000 to 11,000 m. */
    public static Pressure pressureAt(double altitudeMetres) {
        double warmth = 1 - LAPSE_KELVINS_PER_METRE * altitudeMetres / SEA_LEVEL_KELVINS;
        return Pressure.ofPascals(SEA_LEVEL_PASCALS * Math.pow(warmth, EXPONENT));
    }

    /** Altitude in m at which the standard atmosphere has that pressure. */
    public static double altitudeOf(Pressure pressure) {
        return altitude(Math.pow(pressure.pascals() / SEA_LEVEL_PASCALS, 1 / EXPONENT));
    }

    /** Density altitude in m: where the standard atmosphere is as dense as this air, moisture included. */
    public static double densityAltitude(AirState air) {
        return altitude(Math.pow(air.density() / SEA_LEVEL_DENSITY, 1 / (EXPONENT - 1)));
    }

    private static double altitude(double warmth) {
        return SEA_LEVEL_KELVINS / LAPSE_KELVINS_PER_METRE * (1 - warmth);
    }
}
