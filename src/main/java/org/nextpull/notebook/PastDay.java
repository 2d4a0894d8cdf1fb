package org.nextpull.notebook;

import java.util.Optional;
import org.nextpull.fit.Belief;
import org.nextpull.scatter.Scatter;

/**
 * What one earlier session taught.
 *
 * @param isSameEngine whether it carries the name of the engine
 * @param isSameFuel whether it ran on the same fuel
 * @param timing natural log of the curvature of its timing sweep
 * @param mixture the same of its mixture bracket
 * @param scatter scatter of its repeats
 */
record PastDay(
        boolean isSameEngine,
        boolean isSameFuel,
        Optional<Belief> timing,
        Optional<Belief> mixture,
        Optional<Scatter> scatter) {
    boolean taughtAnything() {
        return timing.isPresent() || mixture.isPresent() || scatter.isPresent();
    }
}
