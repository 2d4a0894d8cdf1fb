package org.nextpull.engine.cycle;

/**
 * The walls that the gas loses heat to.
 *
 * @param kelvins temperature in K
 * @param scale factor on the correlation; 1 as published, 0 for no loss
 */
public record Walls(double kelvins, double scale) {}
