package org.nextpull.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Temperature;

/**
 * What must hold before a pull starts, table {@code [start]}.
 *
 * @param coolant window of the coolant
 * @param oil window of the oil
 * @param inlet window of the inlet air
 * @param coolDownS least time between pulls in s
 */
public record StartConditions(
        Optional<TemperatureWindow> coolant,
        Optional<TemperatureWindow> oil,
        Optional<TemperatureWindow> inlet,
        OptionalDouble coolDownS) {
    public static StartConditions defaults() {
        return new StartConditions(Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty());
    }

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
}
