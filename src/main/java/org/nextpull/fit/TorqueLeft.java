package org.nextpull.fit;

/**
 * What a setting leaves of the torque that may be had, mean over the rows.
 *
 * @param expectedPercent expected loss, percent of torque
 * @param chanceOfMuch probability that over {@value #MUCH_PERCENT} % is left
 */
public record TorqueLeft(double expectedPercent, double chanceOfMuch) {
    /** A stop that leaves more than this was a false one. */
    public static final double MUCH_PERCENT = 0.5;
}
