package org.nextpull.plan;

import java.util.OptionalDouble;

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

    private static void requirePositive(String name, OptionalDouble value) {
        if (value.isPresent() && !(value.getAsDouble() > 0 && value.getAsDouble() < Double.MAX_VALUE)) {
            throw new IllegalArgumentException(name + " must be positive: " + value.getAsDouble());
        }
    }
}
