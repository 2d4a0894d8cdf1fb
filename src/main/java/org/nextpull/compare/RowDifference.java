package org.nextpull.compare;

/**
 * The difference at one speed.
 *
 * @param rpm speed
 * @param levels levels of the label and of the reference there, drift taken out
 * @param percent difference in percent of the reference
 * @param band simultaneous 95 % band: it holds at all speeds together
 */
public record RowDifference(double rpm, Levels levels, double percent, PercentInterval band) {
    /** Levels at a speed, in the unit of the pulls. */
    public record Levels(double label, double reference) {}
}
