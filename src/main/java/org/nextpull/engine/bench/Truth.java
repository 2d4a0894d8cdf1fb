package org.nextpull.engine.bench;

import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Torque;

/**
 * What is best for an engine over a band, without any scatter: what a sweep should find. Settings are best in the surroundings looked
 * at, for cool and damp air wants more advance, which no correction takes out; torques are stated in reference air.
 *
 * @param peak advance, the same at every speed, of the highest mean torque over the band at the mixture looked at
 * @param near least advance whose mean torque is within 0.2 % of that
 * @param mixture mixture of the highest mean torque at the peak advance
 * @param torque mean torque at the peak advance and the mixture looked at
 * @param onset least advance, the same at every speed, at which a pull is expected to knock once within the band; empty when it
 *     does not within ten degrees beyond the peak
 * @param rows the same speed by speed
 */
public record Truth(Advance peak, Advance near, Lambda mixture, Torque torque, OptionalDouble onset, List<Row> rows) {
    public Truth {
        rows = List.copyOf(rows);
    }

    /**
     * One speed.
     *
     * @param rpm engine speed
     * @param peak advance of the highest torque
     * @param torque torque there
     */
    public record Row(double rpm, Advance peak, Torque torque) {}
}
