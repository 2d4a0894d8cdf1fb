package org.nextpull.plan;

import java.util.List;
import java.util.Optional;
import org.nextpull.channel.SparkMap;

/**
 * The ignition's map as the plan gives it.
 *
 * @param breakpointsRpm speeds of its cells in rpm, rising; empty where the plan does not say
 * @param present what it holds before the sweep; empty where the plan does not say
 */
public record MapFacts(List<Double> breakpointsRpm, Optional<SparkMap> present) {
    public MapFacts {
        breakpointsRpm = List.copyOf(breakpointsRpm);
    }
}
