package org.nextpull.air;

import org.nextpull.unit.Temperature;

/** Absolute temperature as the standards print it: degC + 273, not + 273.15. The difference to the exact one is below 1e-5 of a factor. */
final class StandardKelvin {
    private static final double PRINTED_OFFSET = 273;

    private StandardKelvin() {}

    static double of(Temperature temperature) {
        return temperature.celsius() + PRINTED_OFFSET;
    }
}
