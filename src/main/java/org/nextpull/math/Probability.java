package org.nextpull.math;

/** The one check that all quantiles share. */
final class Probability {
    private Probability() {}

    static double inside(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("a probability lies above 0 and below 1, not at " + probability);
        }
        return probability;
    }
}
