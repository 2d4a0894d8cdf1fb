package org.nextpull.plan;

import java.util.OptionalDouble;
import org.nextpull.finding.WrittenId;

/**
 * The dyno, table {@code [dyno]}: what takes up the power, and how its torque is had from what was logged.
 *
 * @param kind what takes up the power
 * @param torqueAt the shaft that the logged torque or power is stated at
 * @param inertia what turns
 * @param gearing how roller and engine turn together
 */
public record DynoFacts(Kind kind, Shaft torqueAt, Inertia inertia, Gearing gearing) {

    /** What takes up the power. */
    public enum Kind {
        ENGINE_BRAKE,
        CHASSIS_BRAKE,
        CHASSIS_INERTIA;

        public boolean isChassis() {
            return this != ENGINE_BRAKE;
        }

        /** Where such a dyno measures: behind the gearbox on a chassis dyno, else at the crank. */
        public Shaft usualShaft() {
            return isChassis() ? Shaft.WHEEL : Shaft.CRANK;
        }
    }

    /** The shaft that torque is stated at. */
    public enum Shaft implements WrittenId {
        CRANK,
        /** Power at the driven wheels over engine speed. */
        WHEEL,
        /** The roller's own shaft. */
        ROLLER;
    }

    /** Whether the logged torque already holds what the inertia takes up. */
    public enum InertiaInLog {
        YES,
        NO,
        /** The plan does not say; taken for yes, as many brakes add it. */
        UNSTATED
    }

    /**
     * What speeds up with the engine.
     *
     * @param engineSideKgM2 what turns at engine speed, kg.m2, positive
     * @param rollerKgM2 what turns at roller speed, kg.m2, positive
     * @param inLog whether the logged torque holds their share already
     */
    public record Inertia(OptionalDouble engineSideKgM2, OptionalDouble rollerKgM2, InertiaInLog inLog) {
        public static final Inertia UNKNOWN =
                new Inertia(OptionalDouble.empty(), OptionalDouble.empty(), InertiaInLog.UNSTATED);

        public Inertia {
            requirePositive("engine-side inertia", engineSideKgM2);
            requirePositive("roller inertia", rollerKgM2);
        }

        /** Whether an inertia is known that the log leaves out. */
        public boolean isToBeAdded() {
            return inLog == InertiaInLog.NO && (engineSideKgM2.isPresent() || rollerKgM2.isPresent());
        }
    }

    public static DynoFacts defaults() {
        return new DynoFacts(Kind.ENGINE_BRAKE, Shaft.CRANK, Inertia.UNKNOWN, Gearing.UNKNOWN);
    }

    /**
     * How roller and engine turn together, as far as it is known.
     *
     * @param rollerRadiusM radius of the roller in m; turns road speed into roller speed
     * @param engineRevPerRollerRev engine revolutions for one of the roller, in the gear of the pull
     */
    public record Gearing(OptionalDouble rollerRadiusM, OptionalDouble engineRevPerRollerRev) {
        public static final Gearing UNKNOWN = new Gearing(OptionalDouble.empty(), OptionalDouble.empty());

        public Gearing {
            requirePositive("roller radius", rollerRadiusM);
            requirePositive("engine revolutions per roller revolution", engineRevPerRollerRev);
        }
    }

    private static void requirePositive(String name, OptionalDouble value) {
        if (value.isPresent() && !(value.getAsDouble() > 0 && value.getAsDouble() < Double.MAX_VALUE)) {
            throw new IllegalArgumentException(name + " must be positive: " + value.getAsDouble());
        }
    }
}
