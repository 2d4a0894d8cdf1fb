package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.GasState;

/**
 * How long the charge burns, in crank degrees: {@code C (Sp nu)^(1/3) (h/S)^(2/3)} with mean piston speed Sp, kinematic viscosity
 * nu, chamber height h and laminar burning velocity S, all at the spark.
 *
 * <p>Form: Hires S.D., Tabaczynski R.J., Novak J.M., "The prediction of ignition delay and combustion intervals for a homogeneous
 * charge, spark ignition engine", SAE 780232, 1978, from memory. The constant belongs to an engine's chamber and turbulence.
 *
 * @param constant C in degrees s^-(1/3), 15,000 to 45,000 for real chambers
 */
public record BurnDuration(double constant) {
    private static final double VISCOSITY = 3.3e-7;
    private static final double VISCOSITY_POWER = 0.7;
    private static final double GAS_CONSTANT = 287;

    /**
     * Duration in degrees.
     *
     * @param pistonSpeed mean piston speed in m/s
     * @param height of the chamber in m
     * @param spark state of the charge at the spark
     * @param burningVelocity laminar burning velocity at that state in m/s
     */
    public double degrees(double pistonSpeed, double height, GasState spark, double burningVelocity) {
        double density = spark.pascals() / (GAS_CONSTANT * spark.kelvins());
        double viscosity = VISCOSITY * Math.pow(spark.kelvins(), VISCOSITY_POWER) / density;
        double flameTime = height / burningVelocity;
        return constant * Math.cbrt(pistonSpeed * viscosity * flameTime * flameTime);
    }
}
