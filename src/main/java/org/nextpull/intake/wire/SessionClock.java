package org.nextpull.intake.wire;

import java.time.InstantSource;
import java.util.function.LongSupplier;

/**
 * The clock of one session. No two readings are equal, whichever threads ask, so the order of arrivals is that of their times. Setting
 * the computer's clock moves {@link ArrivalTime#wallMs} only.
 */
public final class SessionClock {
    private final LongSupplier monotonicNs;
    private final InstantSource wall;
    private final long originNs;
    private long lastNs;

    private SessionClock(LongSupplier monotonicNs, InstantSource wall, long startNs) {
        this.monotonicNs = monotonicNs;
        this.wall = wall;
        this.originNs = monotonicNs.getAsLong() - startNs;
        this.lastNs = startNs - 1;
    }

    /** The clock of a session that begins now. */
    public static SessionClock starting(LongSupplier monotonicNs, InstantSource wall) {
        return new SessionClock(monotonicNs, wall, 0);
    }

    /**
     * The clock of a session that goes on after the program had ended. The time between is taken from the computer's clock; where that
     * was set back, no time has passed.
     *
     * @param last the last arrival before
     */
    public static SessionClock resuming(LongSupplier monotonicNs, InstantSource wall, ArrivalTime last) {
        long betweenMs = Math.max(0, wall.millis() - last.wallMs());
        return new SessionClock(monotonicNs, wall, last.sessionNs() + 1 + betweenMs * 1_000_000);
    }

    /** The clock of this computer, for a session that begins now. */
    public static SessionClock system() {
        return starting(System::nanoTime, InstantSource.system());
    }

    public synchronized ArrivalTime now() {
        lastNs = Math.max(lastNs + 1, monotonicNs.getAsLong() - originNs);
        return new ArrivalTime(lastNs, wall.millis());
    }
}
