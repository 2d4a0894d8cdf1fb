package org.nextpull.live;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;

/** How the sources are doing, from what arrives of them and what is said of them. */
final class LinkStates {
    /** What is said of a source when something is wrong that goes by. */
    private static final Set<FindingCode> TROUBLES = Set.of(
            FindingCode.WIRE_SILENT,
            FindingCode.WIRE_NO_LINE_ENDS,
            FindingCode.WIRE_NOT_TEXT,
            FindingCode.WIRE_CHECKSUMS_WRONG,
            FindingCode.WIRE_LINES_BROKEN,
            FindingCode.WIRE_WITHOUT_HEADER,
            FindingCode.WIRE_WITHOUT_CHANNELS,
            FindingCode.WIRE_FIELDS_DIFFER,
            FindingCode.WIRE_NOT_THERE,
            FindingCode.WIRE_IN_USE,
            FindingCode.WIRE_NOT_ALLOWED,
            FindingCode.WIRE_NOT_OPENED,
            FindingCode.WIRE_LIBRARY_UNUSABLE,
            FindingCode.WIRE_WITHOUT_NAME,
            FindingCode.WIRE_UNPLUGGED,
            FindingCode.FOLDER_NOT_READABLE);

    private static final Set<FindingCode> WELL =
            Set.of(FindingCode.WIRE_WELL_AGAIN, FindingCode.WIRE_CONNECTED, FindingCode.FOLDER_READABLE_AGAIN);

    private static final class Source {
        private LiveState.LinkState.Link link = LiveState.LinkState.Link.WAITING;
        private OptionalDouble lastS = OptionalDouble.empty();
        private Optional<Finding> finding = Optional.empty();
    }

    private final Map<String, Source> sources = new LinkedHashMap<>();
    private boolean changed;

    LinkStates(List<String> names) {
        names.forEach(name -> sources.put(name, new Source()));
    }

    void see(Arrival arrival) {
        Source source = sources.get(arrival.source());
        if (source == null) {
            return;
        }
        if (arrival instanceof Chunk) {
            source.lastS = OptionalDouble.of(arrival.at().seconds());
            if (source.link == LiveState.LinkState.Link.SILENT) {
                source.finding = Optional.empty();
            }
            become(source, LiveState.LinkState.Link.CONNECTED);
        } else if (arrival instanceof Arrival.Connected) {
            source.finding = Optional.empty();
            become(source, LiveState.LinkState.Link.CONNECTED);
        } else if (arrival instanceof Arrival.Lost lost && lost.why() != Arrival.Cause.OVERRUN) {
            become(source, LiveState.LinkState.Link.LOST);
        }
    }

    void said(Finding finding) {
        Source source = finding.place().file().map(sources::get).orElse(null);
        if (source == null) {
            return;
        }
        if (TROUBLES.contains(finding.code())) {
            source.finding = Optional.of(finding);
            changed = true;
            if (finding.code() == FindingCode.WIRE_SILENT) {
                become(source, LiveState.LinkState.Link.SILENT);
            }
        } else if (WELL.contains(finding.code())) {
            source.finding = Optional.empty();
            changed = true;
        }
    }

    private void become(Source source, LiveState.LinkState.Link link) {
        if (source.link != link) {
            source.link = link;
            changed = true;
        }
    }

    /** Whether something changed since this was asked last. */
    boolean takeChanged() {
        boolean result = changed;
        changed = false;
        return result;
    }

    List<LiveState.LinkState> all(ArrivalTime now) {
        return sources.entrySet().stream()
                .map(entry -> new LiveState.LinkState(
                        entry.getKey(),
                        entry.getValue().link,
                        entry.getValue().lastS.isPresent()
                                ? OptionalDouble.of(Math.max(
                                        0,
                                        now.seconds() - entry.getValue().lastS.getAsDouble()))
                                : OptionalDouble.empty(),
                        entry.getValue().finding))
                .toList();
    }
}
