package org.nextpull.intake.capture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.intake.wire.ArrivalTime;

/** The folder that holds the captures of one session, one file for each source. */
public final class CaptureFolder {
    /** How the names of captures end. */
    public static final String ENDING = ".capture";

    private static final int MOST_NAME = 60;

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

    /** The time of the last thing that any of them says, from which the clock of the session goes on. */
    public Optional<ArrivalTime> last() throws IOException {
        return summaries().stream()
                .flatMap(summary -> summary.last().stream())
                .max(Comparator.comparingLong(ArrivalTime::sessionNs));
    }

    /** Plays them all again. */
    public CaptureReplay replay() throws IOException {
        return CaptureReplay.open(files());
    }
}
