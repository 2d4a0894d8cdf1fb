package org.nextpull.intake.wire;

/**
 * When something arrived, on two clocks: one that never goes back and one that a person can read.
 *
 * @param sessionNs nanoseconds since the session began; goes on over a restart of the program, from 0
 * @param wallMs milliseconds since 1970 as the computer's clock had it; may jump when somebody sets that clock
 */
public record ArrivalTime(long sessionNs, long wallMs) {
    private static final double NS_A_SECOND = 1e9;

    /**
     * Accepts any time from the beginning of the session.
     *
     * @throws IllegalArgumentException for one before it
     */
    public ArrivalTime {
        if (sessionNs < 0) {
            throw new IllegalArgumentException("a session begins at 0 ns: " + sessionNs);
        }
    }

    /** Seconds since the session began. */
    public double seconds() {
        return sessionNs / NS_A_SECOND;
    }
}
