package org.nextpull.intake.capture;

import java.io.IOException;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.SessionClock;

/**
 * How a session goes on after the program had ended, in good order or not.
 *
 * @param clock its clock, which goes on after the last arrival
 * @param findings what is missing: the time without a program, and what of the captures cannot be read
 */
public record Resumption(SessionClock clock, List<Finding> findings) {
    private static final double MS_A_SECOND = 1000;

    public Resumption {
        findings = List.copyOf(findings);
    }

    /** Looks through the captures of a session; with none, the session simply begins. */
    public static Resumption of(CaptureFolder folder, LongSupplier monotonicNs, InstantSource wall) throws IOException {
        List<CaptureSummary> summaries = folder.summaries();
        List<Finding> findings = new ArrayList<>();
        Optional<ArrivalTime> last = summaries.stream()
                .flatMap(summary -> summary.last().stream())
                .max(Comparator.comparingLong(ArrivalTime::sessionNs));
        if (last.isEmpty()) {
            return new Resumption(SessionClock.starting(monotonicNs, wall), findings);
        }
        double missedS = Math.max(0, wall.millis() - last.get().wallMs()) / MS_A_SECOND;
        findings.add(Finding.note(
                FindingCode.CAPTURE_CONTINUED,
                Place.inFile(folder.folder().toString()),
                Detail.of("seconds", missedS)));
        for (CaptureSummary summary : summaries) {
            if (summary.damagedBytes() > 0) {
                findings.add(Finding.warning(
                        FindingCode.CAPTURE_DAMAGED,
                        Place.inFile(summary.source()),
                        Detail.of("bytes", (double) summary.damagedBytes()),
                        Detail.of("count", summary.damage().size())));
            }
        }
        return new Resumption(SessionClock.resuming(monotonicNs, wall, last.get()), findings);
    }
}
