package org.nextpull.air;

import org.nextpull.unit.Temperature;

/** How somebody measured the water in the air. */
public sealed interface Moisture {
    /**
     * Relative humidity.
     *
     * @param fraction dimensionless, 0 to 1; 0.6 for 60 %. Not checked here: {@link Weather#state} says what is wrong with it
     */
    record RelativeHumidity(double fraction) implements Moisture {}

    /** Reading of a thermometer with a wet sleeve in moving air. */
    record WetBulbReading(Temperature temperature) implements Moisture {}

    /** Temperature at which the air is saturated. */
    record DewPointReading(Temperature temperature) implements Moisture {}

    /** Relative humidity in percent, 0 to 100. Not checked here: {@link Weather#state} says what is wrong with it. */
    static Moisture ofHumidityPercent(double percent) {
        return new RelativeHumidity(percent / 100);
    }

    static Moisture ofWetBulb(Temperature temperature) {
        return new WetBulbReading(temperature);
    }

    static Moisture ofDewPoint(Temperature temperature) {
        return new DewPointReading(temperature);
    }
}
