package org.nextpull.engine.gas;

/**
 * State of a gas.
 *
 * @param pascals absolute pressure in Pa
 * @param kelvins temperature in K
 */
public record GasState(double pascals, double kelvins) {}
