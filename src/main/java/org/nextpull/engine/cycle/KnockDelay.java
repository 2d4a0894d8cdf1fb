package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.GasState;

/**
 * Delay of autoignition of the end gas: {@code tau = 17.68 ms (ON/100)^3.402 p^-1.7 exp(3800 K/T)} with p in atm.
 *
 * <p>Douaud A.M., Eyzat P., "Four-octane-number method for predicting the anti-knock behavior of fuels and engines", SAE 780080,
 * 1978, from memory. Integrated as Livengood and Wu (1955): knock when the integral of dt/tau reaches 1 before the flame arrives.
 *
 * @param factor {@code 17.68e-3 s (ON/100)^3.402}
 */
record KnockDelay(double factor) {
    private static final double SCALE_S = 17.68e-3;
    private static final double OCTANE_POWER = 3.402;
    private static final double PRESSURE_POWER = 1.7;
    private static final double ACTIVATION_K = 3800;
    private static final double ATMOSPHERE_PA = 101325;

    static KnockDelay ofOctane(double octane) {
        return new KnockDelay(SCALE_S * Math.pow(octane / 100, OCTANE_POWER));
    }

    /** One over the delay, in 1/s. */
    double rate(GasState endGas) {
        double pressure = Math.log(endGas.pascals() / ATMOSPHERE_PA);
        return Math.exp(PRESSURE_POWER * pressure - ACTIVATION_K / endGas.kelvins()) / factor;
    }
}
