package org.nextpull.fit;

/**
 * A closed stretch of settings.
 *
 * @param from lower end
 * @param to upper end, not below the lower one
 */
public record Span(double from, double to) {
    public Span {
        if (!Double.isFinite(from) || !Double.isFinite(to) || from > to) {
            throw new IllegalArgumentException("span from " + from + " to " + to);
        }
    }

    public double width() {
        return to - from;
    }

    public boolean contains(double value) {
        return value >= from && value <= to;
    }
}
