package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.GasState;

/**
 * What is trapped when the inlet valve closes.
 *
 * @param state pressure and temperature
 * @param volume volume in m3
 * @param deg crank angle in degrees after top dead centre of combustion, negative
 */
public record Filling(GasState state, double volume, double deg) {}
