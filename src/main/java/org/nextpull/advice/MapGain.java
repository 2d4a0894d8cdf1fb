package org.nextpull.advice;

import org.nextpull.unit.Span;

/**
 * What a map gains over one number at every speed, knock not looked at.
 *
 * @param percent of torque, mean over the band
 * @param interval of it, 5 to 95 %
 */
public record MapGain(double percent, Span interval) {}
