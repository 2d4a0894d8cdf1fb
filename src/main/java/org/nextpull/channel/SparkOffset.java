package org.nextpull.channel;

import org.nextpull.unit.Advance;

/**
 * Degrees added everywhere to a spark map that no log shows.
 *
 * @param added degrees more advance than the map that stood in the engine at first; negative for retard
 */
public record SparkOffset(Advance added) implements Spark {}
