package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.GasState;

/**
 * What came out of a closed cycle.
 *
 * @param energy where the heat went
 * @param peak highest pressure
 * @param opening state when the exhaust valve opens
 * @param knock autoignition
 */
public record CycleResult(Energy energy, PeakPressure peak, GasState opening, Knock knock) {}
