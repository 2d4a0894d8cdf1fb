package org.nextpull.math;

/** A closed stretch of finite numbers, {@code low} not above {@code high}. */
public record Interval(double low, double high) {
    /**
     * Accepts a stretch of one number.
     *
     * @throws IllegalArgumentException for NaN or an infinite end, and when the lower end is above the upper one
     */
    public Interval {
        if (!(Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
            throw new IllegalArgumentException("not an interval: " + low + " to " + high);
        }
    }

    public double width() {
        return high - low;
    }

    public double middle() {
        return low + width() / 2;
    }
}
