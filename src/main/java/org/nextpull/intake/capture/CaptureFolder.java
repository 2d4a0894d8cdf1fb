package org.nextpull.intake.capture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.SessionClock;

/** The folder that holds the captures of one session, one file for each source. */
public final class CaptureFolder {
    /** How the names of captures end. */
    public static final String ENDING = ".capture";

    private static final int MOST_NAME = 60;
    private static final double MS_A_SECOND = 1000;

    private final Path folder;

    public CaptureFolder(Path folder) {
        this.folder = folder;
    }

    public Path folder() {
        return folder;
    }

    /** The file for a source: its name with everything but letters, digits and points made a dash, and a short code of the whole name. */
    public Path fileOf(String source) {
        String plain = source.replaceAll("[^A-Za-z0-9.]+", "-").replaceAll("^[-.]+|[-.]+$", "");
        String end = plain.length() > MOST_NAME ? plain.substring(plain.length() - MOST_NAME) : plain;
        return folder.resolve(end + "-" + Integer.toHexString(source.hashCode()) + ENDING);
    }

    /** The captures in it, by name; none where there is no such folder. */
    public List<Path> files() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(file -> String.valueOf(file.getFileName()).endsWith(ENDING))
                    .sorted()
                    .toList();
        }
    }

    /** What each capture holds. */
    public List<CaptureSummary> summaries() throws IOException {
        List<Path> files = files();
        CaptureSummary[] result = new CaptureSummary[files.size()];
        for (int index = 0; index < result.length; index++) {
            result[index] = CaptureSummary.of(files.get(index));
        }
        return List.of(result);
    }

    /** Looks through the captures of a session; with none, the session simply begins. */
    public Resumption resume(LongSupplier monotonicNs, InstantSource wall) throws IOException {
        List<CaptureSummary> summaries = summaries();
        List<Finding> findings = new ArrayList<>();
        Optional<ArrivalTime> last = last(summaries);
        if (last.isEmpty()) {
            return new Resumption(SessionClock.starting(monotonicNs, wall), findings);
        }
        double missedS = Math.max(0, wall.millis() - last.get().wallMs()) / MS_A_SECOND;
        findings.add(Finding.note(
                FindingCode.CAPTURE_CONTINUED, Place.inFile(folder.toString()), Detail.of("seconds", missedS)));
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

    /** The time of the last thing that any of them says, from which the clock of the session goes on. */
    private static Optional<ArrivalTime> last(List<CaptureSummary> summaries) {
        return summaries.stream()
                .flatMap(summary -> summary.last().stream())
                .max(Comparator.comparingLong(ArrivalTime::sessionNs));
    }

    /** Plays them all again. */
    public CaptureReplay replay() throws IOException {
        return CaptureReplay.open(files());
    }

    /**
     * How a session goes on after the program had ended, in good order or not.
     *
     * @param clock its clock, which goes on after the last arrival
     * @param findings what is missing: the time without a program, and what of the captures cannot be read
     */
    public record Resumption(SessionClock clock, List<Finding> findings) {
        public Resumption {
            findings = List.copyOf(findings);
        }
    }
}
