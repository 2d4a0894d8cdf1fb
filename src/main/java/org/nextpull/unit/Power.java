package org.nextpull.unit;

/**
 * Power of a shaft.
 *
 * @param watts power in W, finite
 */
public record Power(double watts) {
    public Power {
        Finite.require("power", watts);
    }

    public static Power ofWatts(double watts) {
        return new Power(watts);
    }

    public static Power ofKilowatts(double kilowatts) {
        return new Power(kilowatts * 1000);
    }

    public double kilowatts() {
        return watts / 1000;
    }

    /** Torque of a shaft that gives this power at a speed in rpm: T = 60 P / (2 pi n). The speed must not be zero. */
    public Torque torqueAt(double rpm) {
        return Torque.ofNewtonMetres(watts * 30 / (Math.PI * rpm));
    }
}
