package org.nextpull.fit;

/**
 * Centre and standard deviation of a quantity, before or after the data.
 *
 * @param centre mean, or median where the tails are heavy
 * @param sd standard deviation or, for a Student prior, its scale; not negative
 */
public record Belief(double centre, double sd) {
    public Belief {
        if (!Double.isFinite(centre) || !(sd >= 0) || Double.isInfinite(sd)) {
            throw new IllegalArgumentException("belief " + centre + " with spread " + sd);
        }
    }
}
