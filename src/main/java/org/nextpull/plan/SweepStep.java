package org.nextpull.plan;

/**
 * How far a proposal may go toward advance or lean, and how finely the factor can be set.
 *
 * @param largest the largest step, in the unit of the factor (deg or lambda)
 * @param resolution the finest step that the operator can set, not above {@code largest}
 */
public record SweepStep(double largest, double resolution) {
    public SweepStep {
        if (!(resolution > 0 && resolution <= largest)) {
            throw new IllegalArgumentException("no step: largest " + largest + ", resolution " + resolution);
        }
    }
}
