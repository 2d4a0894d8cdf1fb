package org.nextpull.fit;

/**
 * What earlier days of the same engine taught. It may shorten a step, never lengthen one or move the start.
 *
 * @param knowledge means and spreads as the newest of them left them, which began with those of the days before it
 * @param days how many days it rests on
 */
public record Experience(SurfaceKnowledge knowledge, int days) {}
