package org.nextpull.math;

/** A closed stretch of finite numbers, {@code low} not above {@code high}. */
public record Interval(double low, double high) {
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

    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    /** Whether this one lies wholly within the other. */
    public boolean isInside(Interval other) {
        return other.low <= low && high <= other.high;
    }

    public boolean overlaps(Interval other) {
        return low <= other.high && other.low <= high;
    }
}
