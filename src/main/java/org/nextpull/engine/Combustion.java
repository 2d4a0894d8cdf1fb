package org.nextpull.engine;

import org.nextpull.engine.cycle.BurnDuration;

/**
 * How an engine burns.
 *
 * @param duration burn duration
 * @param spread standard deviation of lambda within the cylinder
 * @param completeness fraction of the heat that is released; crevices and leaks keep the rest
 */
public record Combustion(BurnDuration duration, double spread, double completeness) {}
