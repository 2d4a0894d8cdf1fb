package org.nextpull.math;

/**
 * A stretch of the independent variable, cut into equal steps.
 *
 * @param from where it starts
 * @param to where it ends, not before the start
 * @param steps number of steps, at least 1
 */
public record OdeSpan(double from, double to, int steps) {
    /**
     * Accepts a span of no length.
     *
     * @throws IllegalArgumentException when the end lies before the start, one of them is NaN, or there is no step
     */
    public OdeSpan {
        if (!(to >= from) || steps < 1) {
            throw new IllegalArgumentException("not a span: " + from + " to " + to + " in " + steps);
        }
    }

    /** Steps of at most the given length. */
    public static OdeSpan withSteps(double from, double to, double longest) {
        return new OdeSpan(from, to, Math.max(1, (int) Math.ceil((to - from) / longest - 1e-9)));
    }

    /** The independent variable after so many steps. */
    public double at(int step) {
        return step == steps ? to : from + (to - from) * step / steps;
    }
}
