package org.nextpull.engine.cycle;

/**
 * Burned mass fraction over crank angle: {@code x = 1 - exp(-a ((theta - theta0)/duration)^(m+1))} with a = 5 and m = 2 (Heywood,
 * Internal Combustion Engine Fundamentals, section 9.2, from memory). At the end of the duration x is 1 - exp(-5) = 0.9933.
 *
 * @param startDeg spark in degrees after top dead centre
 * @param durationDeg duration in degrees, above 0
 */
public record Wiebe(double startDeg, double durationDeg) {
    private static final double A = 5;
    private static final double M = 2;

    /** Burned fraction, 0 to 1. */
    public double fraction(double deg) {
        double u = (deg - startDeg) / durationDeg;
        return u <= 0 ? 0 : -Math.expm1(-A * u * u * u);
    }

    /** Change of the burned fraction per degree, given the fraction there. */
    double rate(double deg, double fraction) {
        double u = (deg - startDeg) / durationDeg;
        return u <= 0 ? 0 : A * (M + 1) * u * u * (1 - fraction) / durationDeg;
    }

    /** Angle at which a fraction below 1 is burned. */
    public double angleOf(double fraction) {
        return startDeg + durationDeg * Math.cbrt(-Math.log1p(-fraction) / A);
    }
}
