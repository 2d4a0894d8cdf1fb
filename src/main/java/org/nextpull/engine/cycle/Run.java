package org.nextpull.engine.cycle;

/**
 * A closed cycle to be calculated.
 *
 * @param cylinder its size
 * @param filling what is trapped at the start
 * @param charge the gas and the heat in it
 * @param walls what heat is lost to
 * @param rpm engine speed
 * @param exhaustOpensDeg crank angle in degrees after top dead centre at which the cycle ends
 */
public record Run(Cylinder cylinder, Filling filling, Charge charge, Walls walls, double rpm, double exhaustOpensDeg) {}
