package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.Gas;

/**
 * The trapped gas and the heat in it.
 *
 * @param unburned the gas ahead of the flame
 * @param burned the gas behind it
 * @param mass trapped mass in kg
 * @param heat heat of combustion of the whole charge in J
 * @param octane octane number of the fuel
 */
public record Charge(Gas unburned, Gas burned, double mass, double heat, Octane octane) {
    /**
     * Octane number.
     *
     * @param number above 0, as the delay correlation takes it
     */
    public record Octane(double number) {}
}
