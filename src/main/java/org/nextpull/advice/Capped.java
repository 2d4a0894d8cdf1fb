package org.nextpull.advice;

import java.util.OptionalDouble;

/**
 * The best that knock or the plan permits, where the peak lies beyond it: no optimum, and without an interval.
 *
 * @param best the least setting that is as good as the best permitted one, rounded toward retard or rich
 * @param by what caps it: knock, or the plan's limit
 * @param response fitted response there: N.m, or W where power is fitted
 */
public record Capped(double best, ChosenBy by, OptionalDouble response) {}
