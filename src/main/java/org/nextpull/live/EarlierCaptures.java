package org.nextpull.live;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.capture.CaptureFolder;
import org.nextpull.intake.capture.CaptureReplay;
import org.nextpull.intake.folder.FolderMemory;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.Chunk;

/** What a session captured before the program ended, played again for the same sources. */
final class EarlierCaptures {
    private final List<String> sources;
    private final FolderMemory memory = new FolderMemory();
    private final Set<String> unknown = new HashSet<>();

    EarlierCaptures(List<String> sources) {
        this.sources = sources;
    }

    /** Plays all of it; arrivals of sources that this session does not have are left out. */
    void play(CaptureFolder folder, Consumer<Arrival> into) throws IOException {
        try (CaptureReplay replay = folder.replay()) {
            for (Optional<Arrival> next = replay.next(); next.isPresent(); next = replay.next()) {
                ours(next.get()).ifPresent(arrival -> {
                    memory.see(arrival);
                    into.accept(arrival);
                });
            }
        }
    }

    /** What became of the files of its folder, where it had one. */
    FolderMemory folder() {
        return memory;
    }

    /** What is to be said of sources that were left out. */
    List<Finding> findings() {
        return unknown.stream()
                .sorted()
                .map(source -> Finding.warning(FindingCode.LIVE_SOURCE_UNKNOWN, Place.inFile(source)))
                .toList();
    }

    /** A session with one source takes it for the one it had, for a port may have another name after it was plugged in again. */
    private Optional<Arrival> ours(Arrival arrival) {
        String source = arrival.source();
        if (source.equals(OperatorLines.SOURCE) || sources.contains(source)) {
            return Optional.of(arrival);
        }
        if (sources.size() == 1) {
            return Optional.of(renamed(arrival, sources.get(0)));
        }
        unknown.add(source);
        return Optional.empty();
    }

    private static Arrival renamed(Arrival arrival, String name) {
        if (arrival instanceof Chunk chunk) {
            return Chunk.copyOf(name, chunk.at(), chunk.toArray(), chunk.length());
        } else if (arrival instanceof Arrival.Connected connected) {
            return new Arrival.Connected(name, connected.at());
        } else if (arrival instanceof Arrival.Lost lost) {
            return new Arrival.Lost(name, lost.at(), lost.why(), lost.bytes());
        } else if (arrival instanceof Arrival.FromFile file) {
            return new Arrival.FromFile(name, file.at(), file.file(), file.atByte());
        } else if (arrival instanceof Arrival.FileComplete file) {
            return new Arrival.FileComplete(name, file.at(), file.file(), file.taken(), file.print());
        }
        Arrival.Trouble trouble = (Arrival.Trouble) arrival;
        return new Arrival.Trouble(name, trouble.at(), trouble.finding());
    }
}
