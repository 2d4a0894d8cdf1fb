package org.nextpull.live;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.capture.CaptureFolder;
import org.nextpull.intake.capture.CaptureKeeper;
import org.nextpull.intake.capture.CaptureWriter;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.SessionClock;

/** The captures of a session, one a source, and what is wrong with them. */
final class Captures implements AutoCloseable {
    private final CaptureFolder folder;
    private final CaptureKeeper keeper = new CaptureKeeper();
    private final Map<String, CaptureWriter> writers = new LinkedHashMap<>();
    private final Map<String, Finding> failing = new LinkedHashMap<>();
    private ArrivalTime since;
    private long bytes;

    Captures(CaptureFolder folder, List<String> sources, SessionClock clock) {
        this.folder = folder;
        this.since = clock.now();
        for (String source : sources) {
            CaptureWriter writer = CaptureWriter.open(folder.fileOf(source), source, clock);
            writers.put(source, writer);
            keeper.add(writer);
        }
    }

    /** Writes an arrival, before anything else is done with it. */
    void received(Arrival arrival) {
        CaptureWriter writer = writers.get(arrival.source());
        if (writer != null) {
            writer.received(arrival);
        }
        count(arrival);
    }

    /** Counts what is in the capture already. */
    void count(Arrival arrival) {
        bytes += arrival instanceof Chunk chunk ? chunk.length() : 0;
    }

    void syncSoon() {
        keeper.syncSoon();
    }

    /** What is to be said since this was asked last. */
    List<Finding> news(ArrivalTime now) {
        List<Finding> news = new ArrayList<>(keeper.news());
        for (Finding finding : news) {
            String file = finding.place().file().orElse("");
            boolean was = failing.isEmpty();
            if (finding.code() == FindingCode.CAPTURE_NOT_SAVED) {
                failing.put(file, finding);
            } else if (finding.code() == FindingCode.CAPTURE_SAVES_AGAIN) {
                failing.remove(file);
            }
            since = was == failing.isEmpty() ? since : now;
        }
        return news;
    }

    LiveState.CaptureState state() {
        Optional<Finding> why = failing.values().stream().findFirst();
        return new LiveState.CaptureState(folder.folder(), bytes, why, since);
    }

    @Override
    public void close() {
        keeper.close();
    }
}
