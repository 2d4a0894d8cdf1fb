package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.Gas;

/**
 * How long the charge burns, in crank degrees. The flame develops over {@code C (Sp nu)^(1/3) (h/S)^(2/3)} and burns over the same
 * times {@code B/h}, with mean piston speed Sp, kinematic viscosity nu, chamber height h, bore B and laminar burning velocity S.
 *
 * <p>Form: Hires S.D., Tabaczynski R.J., Novak J.M., "The prediction of ignition delay and combustion intervals for a homogeneous
 * charge, spark ignition engine", SAE 780232, 1978, from memory, without its density ratio, which is nearly the same for all sparks.
 * The constant belongs to an engine's chamber and turbulence. Here one Wiebe function stands for both parts: {@link #degrees} weighs
 * the chamber of the spark against that of top dead centre.
 *
 * @param constant C in degrees s^-(1/3) for a chamber ten times as wide as it is high, 25,000 to 55,000 for real chambers
 */
public record BurnDuration(double constant) {
    private static final double VISCOSITY = 3.3e-7;
    private static final double VISCOSITY_POWER = 0.7;
    private static final double GAS_CONSTANT = 287;
    private static final double USUAL_WIDTH = 10;
    private static final double DEVELOPMENT_SHARE = 0.1;

    /**
     * The chamber and the gas in it at one angle.
     *
     * @param height mean height in m
     * @param state unburned gas
     * @param burningVelocity laminar burning velocity in m/s
     */
    public record Chamber(double height, Gas.State state, double burningVelocity) {}

    /**
     * Duration in degrees.
     *
     * @param cylinder the cylinder
     * @param rpm engine speed
     * @param spark chamber at the spark
     * @param top chamber at top dead centre
     */
    public double degrees(Cylinder cylinder, double rpm, Chamber spark, Chamber top) {
        double speed = cylinder.pistonSpeed(rpm);
        double width = cylinder.bore() / (USUAL_WIDTH * top.height());
        return constant
                * (DEVELOPMENT_SHARE * scale(speed, spark) + (1 - DEVELOPMENT_SHARE) * width * scale(speed, top));
    }

    /** {@code (Sp nu)^(1/3) (h/S)^(2/3)}. */
    static double scale(double pistonSpeed, Chamber chamber) {
        Gas.State state = chamber.state();
        double density = state.pascals() / (GAS_CONSTANT * state.kelvins());
        double viscosity = VISCOSITY * Math.pow(state.kelvins(), VISCOSITY_POWER) / density;
        double flameTime = chamber.height() / chamber.burningVelocity();
        return Math.cbrt(pistonSpeed * viscosity * flameTime * flameTime);
    }
}
