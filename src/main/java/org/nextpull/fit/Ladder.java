package org.nextpull.fit;

import org.nextpull.unit.Span;

/**
 * Settings that can be set: {@code origin} and whole steps from it, within a stretch.
 *
 * @param origin a setting that can be set
 * @param step resolution; positive
 * @param within where the settings may lie
 */
public record Ladder(double origin, double step, Span within) {
    private static final double SLACK = 1e-9;

    public Ladder {
        if (!(step > 0) || Double.isInfinite(step) || !Double.isFinite(origin)) {
            throw new IllegalArgumentException("steps of " + step + " from " + origin);
        }
    }

    private long lowest() {
        return (long) Math.ceil((within.low() - origin) / step - SLACK);
    }

    private long highest() {
        return (long) Math.floor((within.high() - origin) / step + SLACK);
    }

    /** How many settings there are; may be 0. */
    public int count() {
        return (int) Math.max(0, highest() - lowest() + 1);
    }

    /** Setting of an index from 0, lowest first. */
    public double setting(int index) {
        return origin + (lowest() + index) * step;
    }

    /** The highest setting that is not above the value, disregarding the stretch: rounding toward retard and rich. */
    public double roundedDown(double value) {
        return origin + Math.floor((value - origin) / step + SLACK) * step;
    }
}
