package org.nextpull.fit;

import org.nextpull.math.NormalMixture;
import org.nextpull.unit.Span;

/** A quantity as the posterior reports it, in its own unit. Immutable. */
public final class Estimate {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    private final NormalMixture reported;

    Estimate(NormalMixture reported) {
        this.reported = reported;
    }

    public double mean() {
        return reported.mean();
    }

    /** 5 to 95 %. */
    public Span ninety() {
        return Span.of(reported.quantile(LOW), reported.quantile(HIGH));
    }

    /** Probability of a value below this one, 0 to 1. */
    public double chanceBelow(double value) {
        return reported.below(value);
    }
}
