package org.nextpull.plan;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The dyno, table {@code [dyno]}.
 *
 * @param kind what takes up the power
 * @param torqueAt the shaft that torque is stated at
 * @param engineSide inertia that turns with the engine in kg.m2
 * @param roller the roller; empty parts on an engine brake
 * @param inertiaInLog whether the logged torque already holds the inertia
 */
public record DynoFacts(
        Kind kind, Shaft torqueAt, OptionalDouble engineSide, Roller roller, InertiaInLog inertiaInLog) {

    /** What takes up the power. */
    public enum Kind {
        ENGINE_BRAKE,
        CHASSIS_BRAKE,
        CHASSIS_INERTIA;

        public boolean isChassis() {
            return this != ENGINE_BRAKE;
        }
    }

    /** The shaft that torque is stated at. */
    public enum Shaft {
        CRANK,
        /** Power at the driven wheels over engine speed. */
        WHEEL,
        /** The roller's own shaft. */
        ROLLER;

        /** As plan files and JSON write it. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Whether the logged torque already holds what the inertia takes up. */
    public enum InertiaInLog {
        YES,
        NO,
        /** The plan does not say, and gives no inertia. */
        UNSTATED
    }

    /**
     * The roller of a chassis dyno.
     *
     * @param inertiaKgM2 moment of inertia of all that turns with it, in kg.m2
     * @param radiusM radius in m
     * @param engineRevPerRollerRev turns of the engine for one turn of the roller, in the gear of the pull
     */
    public record Roller(OptionalDouble inertiaKgM2, OptionalDouble radiusM, OptionalDouble engineRevPerRollerRev) {
        public static Roller unknown() {
            return new Roller(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        }
    }

    public static DynoFacts defaults() {
        return new DynoFacts(
                Kind.ENGINE_BRAKE, Shaft.CRANK, OptionalDouble.empty(), Roller.unknown(), InertiaInLog.UNSTATED);
    }
}
