package org.nextpull.simulator;

import java.util.List;
import org.nextpull.plan.SweepPlan;

/**
 * A day on the model engine that is sent over wires while it runs.
 *
 * @param plan plan that describes engine, dyno, sweep and wires
 * @param seed where all chance comes from
 * @param ports names of the ports, one for each wire of the plan and in the same order
 * @param speed how many times as fast as a real engine it runs; 1 is real time
 */
public record ServeOrder(SweepPlan plan, long seed, List<String> ports, double speed) {
    public static final double SLOWEST = 0.1;
    public static final double FASTEST = 100;

    /**
     * Accepts a speed from {@link #SLOWEST} to {@link #FASTEST}.
     *
     * @throws IllegalArgumentException for any other
     */
    public ServeOrder {
        ports = List.copyOf(ports);
        if (!(speed >= SLOWEST && speed <= FASTEST)) {
            throw new IllegalArgumentException("a speed is between 0.1 and 100: " + speed);
        }
    }
}
