package org.nextpull.response;

import org.nextpull.unit.Power;

/** Corrected power at a speed in rpm. */
public record PowerAtSpeed(double rpm, Power power) {}
