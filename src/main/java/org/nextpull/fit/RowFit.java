package org.nextpull.fit;

import org.nextpull.unit.Span;

/**
 * The optimum of one row.
 *
 * @param rpm speed of the row
 * @param peak peak with its standard deviation
 * @param least least setting that is within near-best of the peak, with its standard deviation
 * @param chanceBracketed probability that the peak lies between the lowest and the highest setting that were run in the row
 */
public record RowFit(double rpm, Belief peak, Belief least, double chanceBracketed) {
    private static final double NINETY = 1.645;

    /** From 5 to 95 % of the least setting; each row's interval stands on its own. */
    public Span ninety() {
        return Span.of(least.centre() - NINETY * least.sd(), least.centre() + NINETY * least.sd());
    }

    public boolean isBracketed() {
        return chanceBracketed >= 0.95;
    }
}
