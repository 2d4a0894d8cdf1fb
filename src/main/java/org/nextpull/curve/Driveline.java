package org.nextpull.curve;

import java.util.OptionalDouble;
import org.nextpull.pull.Gearing;

/**
 * What turns with the engine and where its torque is measured.
 *
 * @param torqueAt shaft that the logged torque or power is stated at
 * @param inertia what is turned
 * @param gearing how roller and engine turn together
 */
public record Driveline(TorqueAt torqueAt, Inertia inertia, Gearing gearing) {
    /**
     * Inertias of a driveline.
     *
     * @param engineSideKgM2 what turns at engine speed, kg.m2
     * @param rollerKgM2 what turns at roller speed, kg.m2
     * @param inLog whether the logged torque holds their share already, as many brakes add it
     */
    public record Inertia(OptionalDouble engineSideKgM2, OptionalDouble rollerKgM2, boolean inLog) {
        public static final Inertia UNKNOWN = new Inertia(OptionalDouble.empty(), OptionalDouble.empty(), true);

        public Inertia {
            requirePositive("engine-side inertia", engineSideKgM2);
            requirePositive("roller inertia", rollerKgM2);
        }

        private static void requirePositive(String name, OptionalDouble value) {
            if (value.isPresent() && !(value.getAsDouble() > 0 && value.getAsDouble() < Double.MAX_VALUE)) {
                throw new IllegalArgumentException(name + " must be positive: " + value.getAsDouble());
            }
        }

        boolean isGiven() {
            return engineSideKgM2.isPresent() || rollerKgM2.isPresent();
        }
    }

    /** Torque measured at that shaft, and nothing known of inertia or gears. */
    public static Driveline of(TorqueAt torqueAt) {
        return new Driveline(torqueAt, Inertia.UNKNOWN, Gearing.UNKNOWN);
    }
}
