package org.nextpull.plan;

import java.util.List;
import org.nextpull.unit.Advance;

/**
 * The ignition's map as the plan gives it.
 *
 * @param breakpointsRpm speeds of its cells in rpm, rising; empty where the plan does not say
 * @param present what it holds before the sweep, rising in speed; empty where the plan does not say
 */
public record MapFacts(List<Double> breakpointsRpm, List<Cell> present) {
    public MapFacts {
        breakpointsRpm = List.copyOf(breakpointsRpm);
        present = List.copyOf(present);
    }

    /** Advance at one engine speed in rpm. */
    public record Cell(double rpm, Advance advance) {}

    public static MapFacts unsaid() {
        return new MapFacts(List.of(), List.of());
    }
}
