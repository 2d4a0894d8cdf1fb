package org.nextpull.response;

import org.nextpull.unit.Power;

/**
 * Corrected power at a speed.
 *
 * @param rpm speed along the axis of the curve, rpm
 * @param power power there
 */
public record PowerAtSpeed(double rpm, Power power) {}
