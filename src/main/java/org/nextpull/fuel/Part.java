package org.nextpull.fuel;

/**
 * A fuel in a blend.
 *
 * @param fuel the fuel
 * @param massShare its kg in a kg of the blend
 */
record Part(Fuel fuel, double massShare) {}
