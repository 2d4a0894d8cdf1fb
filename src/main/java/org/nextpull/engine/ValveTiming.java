package org.nextpull.engine;

/**
 * When the cylinder is closed.
 *
 * @param inletClosesDeg degrees after bottom dead centre
 * @param exhaustOpensDeg degrees before bottom dead centre
 */
record ValveTiming(double inletClosesDeg, double exhaustOpensDeg) {}
