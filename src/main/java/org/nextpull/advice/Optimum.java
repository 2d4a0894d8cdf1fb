package org.nextpull.advice;

import java.util.OptionalDouble;
import org.nextpull.unit.Span;

/**
 * The optimum of a sweep that is bracketed, in the factor's unit: degrees, or lambda.
 *
 * @param peak posterior median of the top of the fitted curve
 * @param peakInterval 90 % interval of the peak, which also holds where the top is flat or the day drifts
 * @param isPeakPlaced whether clean settings enclose the peak; else only {@code best} is known, and the peak may lie beyond what was run
 * @param best the least setting that is near enough to the peak, rounded toward retard or rich
 * @param bestInterval 90 % interval of it, likewise, lopsided as it is
 * @param response fitted response at {@code best}: N.m, or W where power is fitted
 * @param flat settings that cost at most 0.1 % (mixture) or the plan's near-best share (timing) by the fitted curve
 */
public record Optimum(
        double peak,
        Span peakInterval,
        boolean isPeakPlaced,
        double best,
        Span bestInterval,
        OptionalDouble response,
        Span flat) {}
