package org.nextpull.pull;

/**
 * Points of a speed trace, both ends included.
 *
 * @param first first point
 * @param last last point, not before the first
 */
record TracePoints(int first, int last) {
    /**
     * Accepts a single point, which is first and last.
     *
     * @throws IllegalArgumentException when the first point is negative or the last lies before it
     */
    TracePoints {
        if (first < 0 || last < first) {
            throw new IllegalArgumentException("not a span: " + first + " to " + last);
        }
    }

    double durationS(SpeedTrace trace) {
        return trace.durationS(first, last);
    }

    /** Change of the smooth speed from its first to its last point, rpm. */
    double rise(SpeedTrace trace) {
        return trace.smoothRpm(last) - trace.smoothRpm(first);
    }

    double meanRpm(SpeedTrace trace) {
        double sum = 0;
        for (int point = first; point <= last; point++) {
            sum += trace.rpm(point);
        }
        return sum / (last - first + 1);
    }
}
