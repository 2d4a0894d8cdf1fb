package org.nextpull.advice;

import org.nextpull.unit.Span;

/**
 * Best-torque advance of one row, never beyond the advance that was run in it.
 *
 * @param rpm speed of the row
 * @param bestDeg least advance that is as good as the best, rounded toward retard
 * @param intervalDeg 90 % interval of it, as wide as flat tops and drift ask for; each row's interval stands on its own
 */
public record RowOptimum(double rpm, double bestDeg, Span intervalDeg) {}
