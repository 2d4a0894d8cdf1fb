package org.nextpull.compare;

/** Interval of a difference in percent of the reference. */
public record PercentInterval(double low, double high) {
    /** Whether it lies within plus and minus {@code worth}. */
    public boolean isWithin(double worth) {
        return -worth <= low && high <= worth;
    }

    public boolean excludesZero() {
        return low > 0 || high < 0;
    }

    public double halfWidth() {
        return (high - low) / 2;
    }
}
