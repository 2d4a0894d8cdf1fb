package org.nextpull.engine.cycle;

/**
 * The highest cylinder pressure.
 *
 * @param pascals pressure in Pa
 * @param deg where it is, in degrees after top dead centre
 */
public record PeakPressure(double pascals, double deg) {}
