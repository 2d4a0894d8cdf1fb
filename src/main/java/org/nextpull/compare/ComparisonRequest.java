package org.nextpull.compare;

import java.util.Map;
import org.nextpull.scatter.Scatter;
import org.nextpull.unit.Finite;

/**
 * What is asked of a comparison.
 *
 * @param reference label that the others are compared with
 * @param worthPercent difference that matters, in percent, above 0
 * @param looks how often the pulls are looked at
 * @param seed of the draws for bands and several labels; the same seed gives the same result
 * @param known scatter of each label as other pulls told it, such as those of its sweep; empty where none did
 */
public record ComparisonRequest(
        String reference, double worthPercent, InterimLooks looks, long seed, Map<String, Scatter> known) {
    /** Any fixed number will do: the draws for bands must be the same each time. */
    public static final long SEED = 20_260_101;

    /**
     * Checks what is given.
     *
     * @throws IllegalArgumentException when the worth is not above 0 and finite
     */
    public ComparisonRequest {
        Finite.requirePositive("the worth in percent", worthPercent);
        known = Map.copyOf(known);
    }

    /** With nothing known but what the pulls tell. */
    public ComparisonRequest(String reference, double worthPercent, InterimLooks looks, long seed) {
        this(reference, worthPercent, looks, seed, Map.of());
    }

    /** The same, with what other pulls told of the scatter of each label. */
    public ComparisonRequest knowing(Map<String, Scatter> scatters) {
        return new ComparisonRequest(reference, worthPercent, looks, seed, scatters);
    }

    /** One look, with nothing fixed beforehand. */
    public static ComparisonRequest once(String reference, double worthPercent) {
        return new ComparisonRequest(reference, worthPercent, new InterimLooks.Open(0), SEED);
    }
}
