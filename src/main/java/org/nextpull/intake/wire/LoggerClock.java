package org.nextpull.intake.wire;

/**
 * Ties the time that a logger writes into its lines to the time of the session. Arrivals jitter by the milliseconds that a driver holds
 * bytes back, which would spoil the slope of the speed; the logger's own time does not. So the difference of the two clocks is smoothed
 * over {@link #SMOOTHED_OVER_S}, which follows any drift of a quartz, and taken anew where it leaps: the logger was started again.
 */
final class LoggerClock {
    static final double SMOOTHED_OVER_S = 10;
    static final double LEAP_S = 1;

    private boolean started;
    private double difference;
    private double lastWritten;
    private double sinceStart;

    /**
     * The time of a line in the session.
     *
     * @param writtenS time that the logger gives, in s
     * @param arrivedS time of its arrival, in s since the session began
     */
    double session(double writtenS, double arrivedS) {
        double measured = arrivedS - writtenS;
        if (!started || Math.abs(measured - difference) > LEAP_S) {
            started = true;
            difference = measured;
            sinceStart = 0;
        } else {
            double step = Math.max(0, writtenS - lastWritten);
            sinceStart += step;
            double over = Math.min(SMOOTHED_OVER_S, sinceStart + step);
            double gain = over > 0 ? Math.min(1, step / over) : 0;
            difference += gain * (measured - difference);
        }
        lastWritten = writtenS;
        return writtenS + difference;
    }
}
