package org.nextpull.curve;

import java.util.OptionalDouble;
import org.nextpull.math.Series;
import org.nextpull.plan.DynoFacts;
import org.nextpull.pull.SpeedSource;

/** The torque that turning masses take while the speed changes: T = J dw/dt, each mass at its own shaft, stated at one of them. */
record InertiaTorque(DynoFacts dyno, Turning turning) {
    private static final double RAD_S_PER_RPM = Math.PI / 30;

    /** Roller revolutions for one of the axis, as far as a roller inertia needs them. */
    OptionalDouble rollerShare() {
        return dyno.inertia().rollerKgM2().isPresent() ? turning.rollerRevPerAxisRev() : OptionalDouble.of(0);
    }

    /** Engine revolutions for one of the axis, as far as an engine-side inertia needs them. */
    OptionalDouble engineShare() {
        if (dyno.inertia().engineSideKgM2().isEmpty()) {
            return OptionalDouble.of(0);
        }
        return turning.kind() == SpeedSource.Axis.ROLLER
                ? dyno.gearing().engineRevPerRollerRev()
                : OptionalDouble.of(1);
    }

    /** The same without the engine's side. */
    InertiaTorque rollerOnly() {
        DynoFacts.Inertia inertia = dyno.inertia();
        return new InertiaTorque(
                new DynoFacts(
                        dyno.kind(),
                        dyno.torqueAt(),
                        new DynoFacts.Inertia(OptionalDouble.empty(), inertia.rollerKgM2(), inertia.inLog()),
                        dyno.gearing()),
                turning);
    }

    boolean isKnown() {
        return rollerShare().isPresent() && engineShare().isPresent();
    }

    /**
     * Torque in N.m at a shaft that turns {@code shaftRevPerAxisRev} times for each turn of the axis. Power is the same at every shaft,
     * so each mass gives J (its speed over the axis')(its acceleration) over the shaft's share.
     */
    Series at(double shaftRevPerAxisRev, Series times) {
        double engineRatio = engineShare().orElseThrow();
        double engine = dyno.inertia().engineSideKgM2().orElse(0) * engineRatio * engineRatio;
        double roller = dyno.inertia().rollerKgM2().orElse(0) * rollerShare().orElseThrow();
        Series torque = turning.axisRates(times).times(engine * RAD_S_PER_RPM / shaftRevPerAxisRev);
        return roller == 0
                ? torque
                : torque.plus(turning.rollerRates(times).times(roller * RAD_S_PER_RPM / shaftRevPerAxisRev));
    }
}
