package org.nextpull.compare;

/**
 * Interval of a difference in percent of the reference.
 *
 * @param low in percent
 * @param high in percent, not below {@code low}
 */
public record PercentInterval(double low, double high) {
    /** Whether it lies within plus and minus {@code worth}, in percent, above 0. */
    public boolean isWithin(double worth) {
        return -worth <= low && high <= worth;
    }

    /** Whether it lies wholly above or wholly below zero. */
    boolean excludesZero() {
        return low > 0 || high < 0;
    }

    /** In percent. */
    public double halfWidth() {
        return (high - low) / 2;
    }
}
