package org.nextpull.intake.capture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;

/**
 * Plays the captures of a session again: the arrivals of all its sources in the order in which they came. Where the program had ended,
 * or a file is damaged, an {@link Arrival.Lost} stands in the place.
 */
public final class CaptureReplay implements AutoCloseable {
    private final List<Track> tracks = new ArrayList<>();

    private CaptureReplay() {}

    /** Opens the captures of one session. */
    public static CaptureReplay open(List<Path> files) throws IOException {
        CaptureReplay replay = new CaptureReplay();
        try {
            for (Path file : files) {
                replay.tracks.add(new Track(CaptureReader.open(file)));
            }
            return replay;
        } catch (IOException e) {
            replay.close();
            throw e;
        }
    }

    /** The next arrival; empty at the end. */
    public Optional<Arrival> next() throws IOException {
        Optional<Track> first = Optional.empty();
        for (Track track : tracks) {
            if (track.peek().isPresent()
                    && (first.isEmpty() || track.time() < first.get().time())) {
                first = Optional.of(track);
            }
        }
        return first.isPresent() ? first.get().take() : Optional.empty();
    }

    @Override
    public void close() throws IOException {
        for (Track track : tracks) {
            track.reader.close();
        }
    }

    private static final class Track {
        private final CaptureReader reader;
        private Optional<Arrival> next = Optional.empty();
        private boolean started;
        private boolean inOrder = true;
        private String source = "";
        private ArrivalTime last = new ArrivalTime(0, 0);

        Track(CaptureReader reader) {
            this.reader = reader;
        }

        Optional<Arrival> peek() throws IOException {
            while (next.isEmpty()) {
                Optional<CaptureReader.Entry> entry = reader.next();
                if (entry.isEmpty()) {
                    break;
                }
                understand(entry.get());
            }
            return next;
        }

        long time() {
            return next.map(arrival -> arrival.at().sessionNs()).orElse(Long.MAX_VALUE);
        }

        Optional<Arrival> take() throws IOException {
            Optional<Arrival> result = peek();
            next = Optional.empty();
            return result;
        }

        private void understand(CaptureReader.Entry entry) {
            if (entry instanceof CaptureReader.Entry.Damaged damaged) {
                next = Optional.of(new Arrival.Lost(source, last, Arrival.Cause.DAMAGED, damaged.bytes()));
            } else if (entry instanceof CaptureReader.Entry.Started begun) {
                source = begun.source();
                last = begun.at();
                if (started && !inOrder) {
                    next = Optional.of(new Arrival.Lost(source, last, Arrival.Cause.STOPPED, 0));
                }
                started = true;
                inOrder = false;
            } else if (entry instanceof CaptureReader.Entry.Ended end) {
                last = end.at();
                inOrder = true;
            } else if (entry instanceof CaptureReader.Entry.Received received) {
                last = received.arrival().at();
                next = Optional.of(received.arrival());
            }
        }
    }
}
