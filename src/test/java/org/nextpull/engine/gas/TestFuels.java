package org.nextpull.engine.gas;

import org.nextpull.finding.Place;
import org.nextpull.fuel.Blends;

/** Listed fuels, ready for the cycle. */
public final class TestFuels {
    public static final EngineFuel PETROL = fuel("petrol");
    public static final EngineFuel E10 = fuel("e10");
    public static final EngineFuel E85 = fuel("e85");
    public static final EngineFuel METHANOL = fuel("methanol");

    private TestFuels() {}

    public static EngineFuel fuel(String name) {
        return Blends.listed()
                .find(name, Place.nowhere())
                .then(EngineFuel::of)
                .value()
                .orElseThrow();
    }
}
