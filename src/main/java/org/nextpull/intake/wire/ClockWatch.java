package org.nextpull.intake.wire;

import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/** Notices that the computer's clock was set while a session runs. */
final class ClockWatch {
    private static final long LEAST_MS = 2000;

    private Optional<ArrivalTime> last = Optional.empty();

    /** Looks at a time; a finding when the clock was set since the one before. */
    Optional<Finding> see(ArrivalTime now) {
        long setMs = last.map(
                        before -> now.wallMs() - before.wallMs() - (now.sessionNs() - before.sessionNs()) / 1_000_000)
                .orElse(0L);
        last = Optional.of(now);
        return Math.abs(setMs) < LEAST_MS
                ? Optional.empty()
                : Optional.of(
                        Finding.note(FindingCode.CLOCK_WAS_SET, Place.nowhere(), Detail.of("seconds", setMs / 1000.0)));
    }
}
