package org.nextpull.live;

import java.time.Instant;
import java.time.InstantSource;

/** A clock that runs so many times faster than that of the wall, so that a day of half an hour is sent in a minute. */
final class FastClock {
    private static final long NS_A_MS = 1_000_000;

    private FastClock() {}

    /** The clock; the wall clock it shows begins at a fixed date. */
    static LiveSession.Setup.Clock times(int factor, long startMs) {
        long origin = System.nanoTime();
        InstantSource wall = () -> Instant.ofEpochMilli(startMs + (System.nanoTime() - origin) * factor / NS_A_MS);
        return new LiveSession.Setup.Clock(() -> (System.nanoTime() - origin) * factor, wall);
    }
}
