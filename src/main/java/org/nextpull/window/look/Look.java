package org.nextpull.window.look;

import org.nextpull.unit.UnitSystem;

/**
 * What the operator chose to see.
 *
 * @param dark dark ground
 * @param large larger type
 * @param units units that people read
 */
public record Look(boolean dark, boolean large, UnitSystem units) {
    public static Look plain() {
        return new Look(false, false, UnitSystem.METRIC);
    }

    public Look otherGround() {
        return new Look(!dark, large, units);
    }

    public Look otherType() {
        return new Look(dark, !large, units);
    }

    public Look otherUnits() {
        return new Look(dark, large, units == UnitSystem.METRIC ? UnitSystem.US : UnitSystem.METRIC);
    }
}
