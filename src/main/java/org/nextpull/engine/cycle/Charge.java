package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.Gas;

/**
 * The trapped gas and the heat in it.
 *
 * @param unburned the gas ahead of the flame
 * @param burned the gas behind it
 * @param mass trapped mass in kg
 * @param heat heat of combustion of the whole charge in J
 * @param endGas what decides whether it knocks
 */
public record Charge(Gas unburned, Gas burned, double mass, double heat, EndGas endGas) {
    /**
     * What decides whether a charge knocks.
     *
     * @param octane octane number of the fuel, above 0, as the delay correlation takes it
     * @param hotterK how much warmer than the mean the hottest part of the gas is when the inlet closes, in K
     */
    public record EndGas(double octane, double hotterK) {}
}
