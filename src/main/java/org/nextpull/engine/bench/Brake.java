package org.nextpull.engine.bench;

import java.util.List;
import java.util.Optional;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Span;

/**
 * What takes up the torque.
 *
 * @param engineInertia inertia that turns with the engine, in kg.m2
 * @param inertiaInLog whether the logged torque already holds what that inertia takes up
 * @param roller a roller under the driven wheels; empty on an engine brake
 */
public record Brake(double engineInertia, boolean inertiaInLog, Optional<Roller> roller) {
    /** An engine that cannot turn its roller takes very long, not for ever. */
    private static final double LEAST_TORQUE_NM = 1e-3;

    /**
     * A heavy roller and the way to it.
     *
     * @param inertia of all that turns with the roller, in kg.m2
     * @param engineRevPerRollerRev turns of the engine for one turn of the roller
     * @param losses what gears and tyres keep
     */
    public record Roller(double inertia, double engineRevPerRollerRev, Losses losses) {}

    /**
     * What gears and tyres keep.
     *
     * @param share fraction of the engine's torque
     * @param drag torque at the roller in N.m, growing with the square of its speed from half of it at standstill to all of it at
     *     1,000 rpm
     */
    public record Losses(double share, double drag) {
        double dragAt(double rollerRpm) {
            double ratio = rollerRpm / 1000;
            return drag * (0.5 + 0.5 * ratio * ratio);
        }
    }

    /** Seconds that a roller's run through a span of engine speeds in rpm takes at a mean torque of the engine in N.m. */
    public double secondsThrough(Roller roller, Span speeds, double torque) {
        double ratio = roller.engineRevPerRollerRev();
        double inertia = roller.inertia() + engineInertia * ratio * ratio;
        double atRoller =
                torque * ratio * (1 - roller.losses().share()) - roller.losses().dragAt(speeds.low() / ratio);
        double gain = speeds.width() / ratio * Math.PI / 30;
        return inertia * gain / Math.max(LEAST_TORQUE_NM, atRoller);
    }

    public static Brake engineBrake(double engineInertia, boolean inertiaInLog) {
        return new Brake(engineInertia, inertiaInLog, Optional.empty());
    }

    /** How the brake runs an engine at full load. Speeds are engine speeds in rpm. */
    public sealed interface Program {
        /** Speeds that the engine passes. */
        Span range();

        /**
         * The brake lets the engine gain speed at a set rate.
         *
         * @param range from the lowest to the highest speed
         * @param rpmPerSecond rate, positive
         */
        record Acceleration(Span range, double rpmPerSecond) implements Program {}

        /**
         * Held plateaus, one above the other.
         *
         * @param range from the first to the last plateau
         * @param stepRpm distance of plateaus, positive
         * @param holdS time on each
         */
        record Steps(Span range, double stepRpm, double holdS) implements Program {}

        /**
         * One held speed, the spark stepped through a list.
         *
         * @param rpm the speed
         * @param advances in order
         * @param holdS time on each
         */
        record SparkSteps(double rpm, List<Advance> advances, double holdS) implements Program {
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
        record RollerRun(Span range) implements Program {}
    }
}
