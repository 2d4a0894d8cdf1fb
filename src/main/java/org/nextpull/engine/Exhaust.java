package org.nextpull.engine;

/**
 * The exhaust of an engine.
 *
 * @param backPressure pressure above the surroundings in Pa at 6,000 rpm; grows with the square of speed
 * @param coolingShare fraction of the gas's heat above the wall that is lost before the thermocouple at 4,000 rpm
 */
public record Exhaust(double backPressure, double coolingShare) {
    private static final double PRESSURE_RPM = 6000;
    private static final double COOLING_RPM = 4000;
    private static final double COOLING_POWER = -0.25;

    double pressureAbove(double rpm) {
        double ratio = rpm / PRESSURE_RPM;
        return backPressure * ratio * ratio;
    }

    /** Temperature at the thermocouple in K. */
    double afterPort(double kelvins, double rpm, double wallKelvins) {
        double transferUnits = -Math.log1p(-coolingShare) * Math.pow(rpm / COOLING_RPM, COOLING_POWER);
        return wallKelvins + (kelvins - wallKelvins) * Math.exp(-transferUnits);
    }
}
