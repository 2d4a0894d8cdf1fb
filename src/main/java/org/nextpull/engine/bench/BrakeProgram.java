package org.nextpull.engine.bench;

import java.util.List;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Span;

/** How the brake runs an engine at full load. Speeds are engine speeds in rpm. */
public sealed interface BrakeProgram {
    /** Speeds that the engine passes. */
    Span range();

    /**
     * The brake lets the engine gain speed at a set rate.
     *
     * @param range from the lowest to the highest speed
     * @param rpmPerSecond rate, positive
     */
    record Acceleration(Span range, double rpmPerSecond) implements BrakeProgram {}

    /**
     * Held plateaus, one above the other.
     *
     * @param range from the first to the last plateau
     * @param stepRpm distance of plateaus, positive
     * @param holdS time on each
     */
    record Steps(Span range, double stepRpm, double holdS) implements BrakeProgram {}

    /**
     * One held speed, the spark stepped through a list.
     *
     * @param rpm the speed
     * @param advances in order
     * @param holdS time on each
     */
    record SparkSteps(double rpm, List<Advance> advances, double holdS) implements BrakeProgram {
        public SparkSteps {
            advances = List.copyOf(advances);
        }

        @Override
        public Span range() {
            return Span.of(rpm, rpm);
        }
    }

    /**
     * The engine speeds up a roller by itself; nothing brakes.
     *
     * @param range engine speeds at which the throttle is opened and closed
     */
    record RollerRun(Span range) implements BrakeProgram {}
}
