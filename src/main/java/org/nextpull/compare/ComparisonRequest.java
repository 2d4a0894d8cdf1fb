package org.nextpull.compare;

/**
 * What is asked of a comparison.
 *
 * @param reference label that the others are compared with
 * @param worthPercent difference that matters, in percent, above 0
 * @param looks how often the pulls are looked at
 * @param seed of the draws for bands and several labels; the same seed gives the same result
 */
public record ComparisonRequest(String reference, double worthPercent, InterimLooks looks, long seed) {
    /**
     * Checks what is given.
     *
     * @throws IllegalArgumentException when the worth is not above 0 and finite
     */
    public ComparisonRequest {
        if (!(worthPercent > 0) || !Double.isFinite(worthPercent)) {
            throw new IllegalArgumentException("the worth is above 0 %, not " + worthPercent);
        }
    }
}
