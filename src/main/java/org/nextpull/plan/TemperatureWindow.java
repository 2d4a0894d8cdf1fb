package org.nextpull.plan;

import org.nextpull.unit.Temperature;

/**
 * A range of temperatures.
 *
 * @param low lowest, not above {@code high}
 * @param high highest
 */
public record TemperatureWindow(Temperature low, Temperature high) {
    public TemperatureWindow {
        if (low.kelvins() > high.kelvins()) {
            throw new IllegalArgumentException("window reversed: " + low + " to " + high);
        }
    }

    public boolean contains(Temperature temperature) {
        return temperature.kelvins() >= low.kelvins() && temperature.kelvins() <= high.kelvins();
    }
}
