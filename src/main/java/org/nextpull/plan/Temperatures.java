package org.nextpull.plan;

import java.util.Optional;
import org.nextpull.unit.Temperature;

/**
 * Highest temperatures allowed.
 *
 * @param exhaust of the exhaust gas, any sensor
 * @param coolant of the coolant
 * @param oil of the oil
 * @param inlet of the inlet air
 */
public record Temperatures(
        Optional<Temperature> exhaust,
        Optional<Temperature> coolant,
        Optional<Temperature> oil,
        Optional<Temperature> inlet) {
    public static Temperatures none() {
        return new Temperatures(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
