package org.nextpull.fit;

import org.nextpull.math.NormalMixture;
import org.nextpull.unit.Span;

/** A quantity as the posterior reports it, in its own unit. Immutable. */
public final class PosteriorValue {
    private final NormalMixture reported;

    PosteriorValue(NormalMixture reported) {
        this.reported = reported;
    }

    public double mean() {
        return reported.mean();
    }

    /** 5 to 95 %. */
    public Span ninety() {
        return interval(90);
    }

    /** The interval that holds the quantity with a probability, percent; as much lies below it as above. */
    public Span interval(double percent) {
        double beside = (100 - percent) / 200;
        return Span.of(reported.quantile(beside), reported.quantile(1 - beside));
    }

    /** Probability of a value below this one, 0 to 1. */
    public double chanceBelow(double value) {
        return reported.below(value);
    }
}
