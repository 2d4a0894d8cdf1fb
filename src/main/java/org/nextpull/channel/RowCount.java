package org.nextpull.channel;

/**
 * Rows of a source.
 *
 * @param good rows that became samples
 * @param bad rows that were skipped as broken
 */
public record RowCount(long good, long bad) {}
