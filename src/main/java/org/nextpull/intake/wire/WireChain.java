package org.nextpull.intake.wire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.channel.Block;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.ColumnReader;

/**
 * From arrivals to samples: the one way of the data for wires and for captures of them. What comes out depends on the arrivals alone;
 * {@link #tick} only lets silence be noticed and settled rows out earlier. For one thread.
 */
public final class WireChain {
    private final Map<String, WireSource> sources = new LinkedHashMap<>();
    private final Map<String, SourceLines> lines = new LinkedHashMap<>();
    private final ColumnReader reader;
    private final LogHints hints;
    private final Listener listener;
    private final RowMerger merger;
    private final ClockWatch clock = new ClockWatch();

    /** Takes what comes out, on the thread that feeds the chain. */
    public interface Listener {
        /**
         * Rows of one source as soon as its lines are read, before they are merged with those of others: what alarms look at. The time
         * is that of the session, less the delay of the source.
         */
        void rows(String source, Samples samples);

        /** Rows of all ports, merged, in order of time: what pulls are found in. Files of folders are not among them. */
        void block(Block block);

        /** Something that is to be said, with the time at which it was noticed. */
        void said(ArrivalTime at, Finding finding);

        /** A file of a folder is complete. */
        void fileComplete(Arrival.FileComplete file);
    }

    /** Makes the chain of a session. */
    public WireChain(List<WireSource> sources, LogHints hints, ColumnReader reader, Listener listener) {
        this.reader = reader;
        this.hints = hints;
        this.listener = listener;
        int tracks = 0;
        for (WireSource source : sources) {
            this.sources.put(source.name(), source);
            SourceLines ofSource = linesOf(source);
            lines.put(source.name(), ofSource);
            tracks += source.isFolder() ? 0 : ofSource.declaredTracks();
        }
        this.merger = new RowMerger(tracks);
    }

    private SourceLines linesOf(WireSource source) {
        return new SourceLines(source.name(), source.lines(), source.settings(), reader, hints);
    }

    /** How the columns of a source were understood; empty before. */
    public List<SourceDescription.Column> columns(String source) {
        SourceLines ofSource = lines.get(source);
        return ofSource == null ? List.of() : ofSource.described();
    }

    /** Takes the next arrival; one of an unknown source is an error of the caller. */
    public void accept(Arrival arrival) {
        ArrivalTime at = arrival.at();
        WireSource source = sources.get(arrival.source());
        SourceLines ofSource = lines.get(arrival.source());
        if (source == null || ofSource == null) {
            throw new IllegalArgumentException("no such source: " + arrival.source());
        }
        clock.see(at).ifPresent(finding -> listener.said(at, finding));
        tick(at);
        if (arrival instanceof Chunk chunk) {
            ofSource.bytes(chunk);
        } else if (arrival instanceof Arrival.Connected) {
            ofSource.connected(at);
            say(at, Finding.note(FindingCode.WIRE_CONNECTED, Place.inFile(source.name())));
        } else if (arrival instanceof Arrival.Lost lost) {
            ofSource.lost();
            lost(lost);
        } else if (arrival instanceof Arrival.FromFile file) {
            if (file.atByte() == 0) {
                ofSource.finish();
                pass(source, ofSource, at);
                ofSource = linesOf(source);
                lines.put(source.name(), ofSource);
                ofSource.begins(at);
            }
        } else if (arrival instanceof Arrival.FileComplete complete) {
            ofSource.finish();
            listener.fileComplete(complete);
        } else if (arrival instanceof Arrival.Trouble trouble) {
            say(at, trouble.finding());
        }
        pass(source, ofSource, at);
    }

    /** Notes that time passes though nothing arrives: to be called about ten times a second. */
    public void tick(ArrivalTime now) {
        merger.now(now.seconds());
        sources.values().forEach(source -> {
            SourceLines ofSource = lines.get(source.name());
            if (ofSource != null && !source.isFolder()) {
                ofSource.judge(now);
                pass(source, ofSource, now);
            }
        });
    }

    /** Nothing more will arrive: lets out what is held back. */
    public void finish(ArrivalTime now) {
        sources.values().forEach(source -> {
            SourceLines ofSource = lines.get(source.name());
            if (ofSource != null) {
                ofSource.finish();
                pass(source, ofSource, now);
            }
        });
        merger.finish();
        blocks(now);
    }

    private void lost(Arrival.Lost lost) {
        Place place = Place.inFile(lost.source());
        switch (lost.why()) {
            case UNPLUGGED -> say(lost.at(), Finding.warning(FindingCode.WIRE_UNPLUGGED, place));
            case OVERRUN ->
                say(lost.at(), Finding.warning(FindingCode.WIRE_OVERRUN, place, Detail.of("bytes", (double)
                        lost.bytes())));
            case NOT_SAVED, DAMAGED ->
                say(
                        lost.at(),
                        Finding.warning(
                                FindingCode.CAPTURE_DAMAGED,
                                place,
                                Detail.of("bytes", (double) lost.bytes()),
                                Detail.of("count", 1)));
            case CLOSED, STOPPED -> {
                // said by the session, which closed it or goes on
            }
        }
    }

    private void pass(WireSource source, SourceLines ofSource, ArrivalTime at) {
        ofSource.takeFindings().forEach(finding -> say(at, finding));
        for (RowMerger.TrackRows rows : ofSource.takeRows()) {
            listener.rows(source.name(), rows.samples());
            if (!source.isFolder()) {
                merger.add(rows, source.lines().delayS(), at.seconds());
            }
        }
        blocks(at);
    }

    private void blocks(ArrivalTime at) {
        merger.takeFindings().forEach(finding -> say(at, finding));
        merger.takeBlocks().forEach(listener::block);
    }

    private void say(ArrivalTime at, Finding finding) {
        listener.said(at, finding);
    }

    /** Notices that the computer's clock was set while a session runs. */
    private static final class ClockWatch {
        private static final long LEAST_MS = 2000;

        private Optional<ArrivalTime> last = Optional.empty();

        /** Looks at a time; a finding when the clock was set since the one before. */
        Optional<Finding> see(ArrivalTime now) {
            long setMs = last.map(before ->
                            now.wallMs() - before.wallMs() - (now.sessionNs() - before.sessionNs()) / 1_000_000)
                    .orElse(0L);
            last = Optional.of(now);
            return Math.abs(setMs) < LEAST_MS
                    ? Optional.empty()
                    : Optional.of(Finding.note(
                            FindingCode.CLOCK_WAS_SET, Place.nowhere(), Detail.of("seconds", setMs / 1000.0)));
        }
    }
}
