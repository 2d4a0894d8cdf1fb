package org.nextpull.engine.bench;

import java.util.SplittableRandom;

/** The one source of chance: repeatable from its seed. Not for use by several threads. */
final class Noise {
    private static final int FEW = 30;

    private final SplittableRandom random;

    Noise(long seed) {
        this(new SplittableRandom(seed));
    }

    private Noise(SplittableRandom random) {
        this.random = random;
    }

    /** Another source, so that what one part draws does not shift what another gets. */
    Noise branch() {
        return new Noise(random.split());
    }

    /** Normally distributed around zero. */
    double normal(double standardDeviation) {
        return standardDeviation == 0 ? 0 : random.nextGaussian() * standardDeviation;
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    /** How many of a number of trials succeed; a fractional number of trials is met on average. */
    int successes(double trials, double probability) {
        int whole = (int) Math.floor(trials);
        int count = whole + (chance(trials - whole) ? 1 : 0);
        if (count > FEW) {
            double mean = count * probability;
            double drawn = Math.rint(mean + normal(Math.sqrt(mean * (1 - probability))));
            return (int) Math.max(0, Math.min(count, drawn));
        }
        int found = 0;
        for (int trial = 0; trial < count; trial++) {
            found += chance(probability) ? 1 : 0;
        }
        return found;
    }
}
