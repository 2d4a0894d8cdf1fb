package org.nextpull.engine.cycle;

/**
 * Friction mean effective pressure: {@code A + B pmax + C Sp + D Sp^2} (Chen S.K., Flynn P.F., SAE 650733, 1965, from memory).
 *
 * @param constant A in Pa
 * @param perPeakPressure B, pressure over pressure
 * @param perSpeed terms in mean piston speed
 */
public record ChenFlynn(double constant, double perPeakPressure, PerSpeed perSpeed) {
    /**
     * Terms in mean piston speed.
     *
     * @param linear C in Pa.s/m
     * @param square D in Pa.s2/m2
     */
    public record PerSpeed(double linear, double square) {}

    /**
     * Friction mean effective pressure in Pa.
     *
     * @param peak highest cylinder pressure
     * @param pistonSpeed mean piston speed in m/s
     * @param thickness factor on the part that oil makes, 1 for hot oil
     */
    public double pascals(ClosedCycle.PeakPressure peak, double pistonSpeed, double thickness) {
        return constant
                + perPeakPressure * peak.pascals()
                + thickness * perSpeed.linear() * pistonSpeed
                + perSpeed.square() * pistonSpeed * pistonSpeed;
    }
}
