package org.nextpull.unit;

/**
 * Power of a shaft.
 *
 * @param watts power in W, finite
 */
public record Power(double watts) {
    /**
     * Accepts any finite number; a driven shaft has negative power.
     *
     * @throws IllegalArgumentException for NaN or an infinite power
     */
    public Power {
        Finite.require("power", watts);
    }

    /**
     * From W.
     *
     * @param watts any finite number
     * @throws IllegalArgumentException for NaN or an infinite power
     */
    public static Power ofWatts(double watts) {
        return new Power(watts);
    }

    /** The power in kW. */
    public double kilowatts() {
        return watts / 1000;
    }

    /**
     * Torque of a shaft that gives this power at a speed: T = 60 P / (2 pi n).
     *
     * @param rpm speed of that shaft in rpm, finite and not 0
     * @throws IllegalArgumentException at speed 0 or NaN, where there is no such torque
     */
    public Torque torqueAt(double rpm) {
        return Torque.ofNewtonMetres(watts * 30 / (Math.PI * rpm));
    }
}
