package org.nextpull.simulator;

import org.nextpull.unit.Unit;

/**
 * How a dialect writes one channel.
 *
 * @param name header without its unit
 * @param unit unit of the numbers
 * @param decimals digits behind the decimal mark
 */
record LogColumn(String name, Unit unit, int decimals) {}
