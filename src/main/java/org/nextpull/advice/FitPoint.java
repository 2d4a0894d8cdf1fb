package org.nextpull.advice;

import org.nextpull.unit.Span;

/**
 * A point of the fitted curve of a sweep.
 *
 * @param setting degrees, or lambda
 * @param response posterior median of the drift-free response there: N.m, or W where power is fitted
 * @param interval 5 to 95 % of it
 */
public record FitPoint(double setting, double response, Span interval) {}
