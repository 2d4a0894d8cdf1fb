package org.nextpull.unit;

/**
 * Torque of a shaft.
 *
 * @param newtonMetres torque in N.m, finite; negative when the shaft is driven
 */
public record Torque(double newtonMetres) {
    public Torque {
        Finite.require("torque", newtonMetres);
    }

    public static Torque ofNewtonMetres(double newtonMetres) {
        return new Torque(newtonMetres);
    }

    /** Power at a speed: P = T 2 pi n / 60. */
    public Power at(double rpm) {
        return Power.ofWatts(newtonMetres * rpm * Math.PI / 30);
    }
}
