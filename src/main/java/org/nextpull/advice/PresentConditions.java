package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.unit.Temperature;

/**
 * The temperatures of this moment; empty where they are not known, as over old logs.
 *
 * @param exhaust hottest sensor
 */
public record PresentConditions(
        Optional<Temperature> coolant,
        Optional<Temperature> oil,
        Optional<Temperature> inletAir,
        Optional<Temperature> exhaust) {
    public static PresentConditions unknown() {
        return new PresentConditions(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
