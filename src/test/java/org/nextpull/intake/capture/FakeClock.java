package org.nextpull.intake.capture;

import java.time.Instant;
import java.time.InstantSource;
import org.nextpull.intake.wire.SessionClock;

/** Two clocks that a test turns by hand. */
final class FakeClock implements InstantSource {
    private long ns;
    private long wallMs = 1_700_000_000_000L;

    void advanceMs(long ms) {
        ns += ms * 1_000_000;
        wallMs += ms;
    }

    void setWallBy(long ms) {
        wallMs += ms;
    }

    SessionClock session() {
        return SessionClock.starting(() -> ns, this);
    }

    @Override
    public Instant instant() {
        return Instant.ofEpochMilli(wallMs);
    }
}
