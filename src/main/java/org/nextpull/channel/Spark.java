package org.nextpull.channel;

/** What stands in the engine as spark: advance over speed, or degrees added to a map that is not known. */
public sealed interface Spark permits SparkMap, SparkOffset {}
