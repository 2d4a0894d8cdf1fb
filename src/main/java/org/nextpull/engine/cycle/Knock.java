package org.nextpull.engine.cycle;

/**
 * Autoignition of the end gas in the mean cycle.
 *
 * @param integral integral of Livengood and Wu when nine tenths are burned; from 1 up the mean cycle knocks
 * @param unburnedAtOnset fraction of the charge ahead of the flame when the integral reached 1; 0 when it did not before that
 */
public record Knock(double integral, double unburnedAtOnset) {}
