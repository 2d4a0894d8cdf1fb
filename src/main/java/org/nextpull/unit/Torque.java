package org.nextpull.unit;

/**
 * Torque of a shaft.
 *
 * @param newtonMetres torque in N.m, finite; negative when the shaft is driven
 */
public record Torque(double newtonMetres) {
    /**
     * Accepts any finite number.
     *
     * @throws IllegalArgumentException for NaN or an infinite torque
     */
    public Torque {
        Finite.require("torque", newtonMetres);
    }

    /**
     * From N.m.
     *
     * @param newtonMetres any finite number; negative when the shaft is driven
     * @throws IllegalArgumentException for NaN or an infinite torque
     */
    public static Torque ofNewtonMetres(double newtonMetres) {
        return new Torque(newtonMetres);
    }

    /**
     * Power at a speed: P = T 2 pi n / 60.
     *
     * @param rpm speed of the same shaft in rpm, finite
     * @throws IllegalArgumentException for NaN or an infinite speed
     */
    public Power at(double rpm) {
        return Power.ofWatts(newtonMetres * rpm * Math.PI / 30);
    }
}
