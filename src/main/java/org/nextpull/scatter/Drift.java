package org.nextpull.scatter;

/**
 * Slow change over the day that no setting explains.
 *
 * @param percentPerPull change of the response a pull, in percent of the level
 * @param standardError its standard error, in the same unit
 */
public record Drift(double percentPerPull, double standardError) {}
