package org.nextpull.pull;

/**
 * Times that rule the finding of pulls.
 *
 * @param settleS most that is cut off the start of a pull or plateau while the load settles, s, not negative
 * @param holdS least length of a plateau, s, positive
 */
public record PullTimes(double settleS, double holdS) {
    public static final PullTimes STANDARD = new PullTimes(2, 3);

    public PullTimes {
        if (!(settleS >= 0 && settleS < Double.MAX_VALUE)) {
            throw new IllegalArgumentException("settling time must be finite and not negative: " + settleS);
        }
        if (!(holdS > 0 && holdS < Double.MAX_VALUE)) {
            throw new IllegalArgumentException("hold time must be finite and positive: " + holdS);
        }
    }
}
