package org.nextpull.intake.wire;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.channel.Block;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * Makes one row out of what several sources say. A row is a line of the fastest source, {@link LeadingTrack}, at the time at which it
 * was measured: its arrival less the delay of its source. The channels of the others are interpolated to that time where they come at
 * least four times a second, and held where they come slower or change in steps; events are counted in the first row after them. Over a
 * hole of half a second, or of three usual steps of a slow channel, nothing is made up: the cell is absent.
 *
 * <p>What a row holds depends on times only, never on when this was asked, so a capture gives the same rows as the wire gave. The
 * lines of merged rows are counted from 1, since each source counts its own. With one source, its rows go through as they are.
 */
final class RowMerger {
    /** How much later than its arrival says a line may turn out to have been measured, since the clock of its logger is smoothed. */
    private static final double SLACK_S = 0.1;

    private final boolean single;
    private final LeadingTrack lead = new LeadingTrack();
    private final Map<String, Double> delays = new LinkedHashMap<>();
    private final Map<String, Map<Channel, ChannelTrace>> traces = new LinkedHashMap<>();
    private final Deque<Row> rows = new ArrayDeque<>();
    private final List<Block> blocks = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private List<Channel> channels = new ArrayList<>(List.of(Channel.of(Role.TIME)));
    private SamplesBuilder builder = Samples.builder(channels);
    private double lastS = Double.NEGATIVE_INFINITY;
    private long made;

    /**
     * Prepares to merge.
     *
     * @param tracks how many make-ups of lines are to come
     */
    RowMerger(int tracks) {
        this.single = tracks <= 1;
    }

    /** Takes rows of one source that arrived now. */
    void add(TrackRows from, double late, double nowS) {
        if (single) {
            pass(from.samples());
            return;
        }
        now(nowS);
        delays.put(from.track(), late);
        Map<Channel, ChannelTrace> known = traces.computeIfAbsent(from.track(), track -> new LinkedHashMap<>());
        Samples samples = from.samples();
        Channel time = Channel.of(Role.TIME);
        for (Channel channel : samples.channels()) {
            if (!channel.equals(time)) {
                ChannelTrace trace = known.computeIfAbsent(channel, each -> newTrace(from.track(), each));
                for (int row : samples.presentRows(channel)) {
                    trace.add(samples.value(time, row), samples.value(channel, row));
                }
            }
        }
        lead.count(from.track(), samples.rows(), nowS);
        boolean mayLead = lead.leading().map(from.track()::equals).orElse(true);
        for (int row = 0; mayLead && row < samples.rows(); row++) {
            rows.addLast(new Row(from.track(), samples, row, samples.value(time, row)));
        }
    }

    /** Notes the time: makes the rows that are settled. */
    void now(double nowS) {
        if (single) {
            return;
        }
        if (lead.passes(nowS)) {
            keepLeading();
        }
        if (lead.leading().isPresent()) {
            while (!rows.isEmpty() && isSettled(rows.getFirst(), nowS)) {
                make(rows.removeFirst());
            }
            traces.values().forEach(track -> track.values().forEach(trace -> trace.forgetBefore(lastS)));
        }
    }

    /** Nothing more will come: makes the rows that wait. */
    void finish() {
        if (lead.leading().isEmpty()) {
            lead.passes(Double.MAX_VALUE);
            keepLeading();
        }
        rows.forEach(this::make);
        rows.clear();
    }

    List<Block> takeBlocks() {
        closeBlock();
        List<Block> result = List.copyOf(blocks);
        blocks.clear();
        return result;
    }

    List<Finding> takeFindings() {
        List<Finding> result = List.copyOf(findings);
        findings.clear();
        return result;
    }

    private void pass(Samples samples) {
        for (int from = 0; from < samples.rows(); from += Block.MOST_ROWS) {
            int end = Math.min(samples.rows(), from + Block.MOST_ROWS);
            blocks.add(new Block(from == 0 && end == samples.rows() ? samples : samples.slice(from, end)));
        }
    }

    /** A channel that another source has already is another sensor of its role. */
    private ChannelTrace newTrace(String track, Channel channel) {
        Channel free = channel;
        while (channels.contains(free)) {
            free = new Channel(channel.role(), free.sensor() + 1);
        }
        if (!free.equals(channel)) {
            findings.add(Finding.note(
                    FindingCode.WIRE_CHANNEL_TWICE,
                    Place.inFile(track),
                    Detail.of("channel", channel.id()),
                    Detail.of("other", ownerOf(channel)),
                    Detail.of("sensor", free.sensor())));
        }
        closeBlock();
        channels = new ArrayList<>(channels);
        channels.add(free);
        builder = Samples.builder(channels);
        return new ChannelTrace(free);
    }

    private String ownerOf(Channel channel) {
        return traces.entrySet().stream()
                .filter(entry -> entry.getValue().containsKey(channel))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("-");
    }

    private void keepLeading() {
        Optional<String> leading = lead.leading();
        List<Row> kept = rows.stream()
                .filter(row -> row.chosen || leading.map(row.track::equals).orElse(false))
                .sorted(Comparator.comparingDouble(row -> row.timeS))
                .toList();
        kept.forEach(row -> row.chosen = true);
        rows.clear();
        rows.addAll(kept);
    }

    private boolean isSettled(Row row, double nowS) {
        for (Map.Entry<String, Map<Channel, ChannelTrace>> track : traces.entrySet()) {
            if (!track.getKey().equals(row.track)) {
                double knownUntilS = nowS - delays.getOrDefault(track.getKey(), 0.0) - SLACK_S;
                for (ChannelTrace trace : track.getValue().values()) {
                    if (!trace.isSettled(row.timeS, knownUntilS)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private void make(Row row) {
        if (row.timeS <= lastS) {
            return;
        }
        lastS = row.timeS;
        builder.row(++made, row.samples.label(row.row), row.samples.fuel(row.row));
        builder.set(0, row.timeS);
        traces.forEach((track, known) -> known.forEach((channel, trace) -> {
            var value = track.equals(row.track) ? row.samples.find(channel, row.row) : trace.at(row.timeS);
            value.ifPresent(number -> builder.set(trace.channel(), number));
        }));
        if (builder.rows() == Block.MOST_ROWS) {
            closeBlock();
        }
    }

    private void closeBlock() {
        if (builder.rows() > 0) {
            blocks.add(new Block(builder.build()));
            builder = Samples.builder(channels);
        }
    }

    private static final class Row {
        private final String track;
        private final Samples samples;
        private final int row;
        private final double timeS;
        private boolean chosen;

        Row(String track, Samples samples, int row, double timeS) {
            this.track = track;
            this.samples = samples;
            this.row = row;
            this.timeS = timeS;
        }
    }

    /**
     * Rows of one make-up of lines.
     *
     * @param track the source, and the address of its sentences where it has several
     * @param samples the rows; their time is that of the session, less the delay of the source
     */
    record TrackRows(String track, Samples samples) {}
}
