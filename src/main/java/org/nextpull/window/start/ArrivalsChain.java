package org.nextpull.window.start;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.channel.Block;
import org.nextpull.channel.Channel;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.WireChain;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.unit.Unit;

/** Understands what arrives by the same chain that a session uses, and keeps the latest of it. For one thread; keeps no file. */
final class ArrivalsChain {
    private static final int MOST_SAID = 6;

    private final List<WireSource> wires;
    private final WireChain chain;
    private final FindingText sentences;
    private Shown shown;
    private final Map<String, SourceWatch> watches = new LinkedHashMap<>();
    private final Map<String, Map<Channel, Double>> latest = new HashMap<>();
    private final Deque<FormPage.Said> said = new ArrayDeque<>();

    ArrivalsChain(List<WireSource> wires, LogHints hints, Shown shown) {
        this.wires = List.copyOf(wires);
        this.shown = shown;
        this.sentences = FindingText.in(shown);
        this.chain = new WireChain(wires, hints, new ColumnReader(), new Listening());
        wires.forEach(wire -> {
            watches.put(wire.name(), new SourceWatch(wire.isFolder()));
            latest.put(wire.name(), new HashMap<>());
        });
    }

    void accept(Arrival arrival) {
        SourceWatch watch = watches.get(arrival.source());
        if (watch != null) {
            watch.see(arrival);
            if (arrival instanceof Chunk || arrival instanceof Arrival.FromFile) {
                watch.raw(arrival);
            }
        }
        chain.accept(arrival);
    }

    /** The units that people read from now on. */
    void units(Shown newShown) {
        shown = newShown;
    }

    void tick(ArrivalTime now) {
        chain.tick(now);
    }

    Arrivals.Page page(ArrivalTime now) {
        List<Arrivals.Page.Source> sources = new ArrayList<>();
        for (WireSource wire : wires) {
            SourceWatch watch = watches.get(wire.name());
            if (watch != null) {
                List<Arrivals.Page.Column> columns = chain.columns(wire.name()).stream()
                        .map(column -> column(wire.name(), column))
                        .toList();
                boolean readable = columns.stream().anyMatch(Arrivals.Page.Column::isUnderstood);
                sources.add(new Arrivals.Page.Source(
                        wire.name(),
                        readable && watch.isAlive(now),
                        watch.state(now, readable),
                        watch.rawText(),
                        columns));
            }
        }
        return new Arrivals.Page(sources, List.copyOf(said));
    }

    private Arrivals.Page.Column column(String source, SourceDescription.Column column) {
        Optional<Channel> channel = column.channel();
        Optional<Double> value = channel.flatMap(
                one -> Optional.ofNullable(latest.getOrDefault(source, Map.of()).get(one)));
        return new Arrivals.Page.Column(
                column.header(),
                channel.map(one -> one.id().replace('_', ' ')).orElse(""),
                column.unit().map(Unit::sign).orElse(""),
                channel.isPresent() && value.isPresent()
                        ? shown.value(channel.get().role().quantity(), value.get())
                        : "");
    }

    private final class Listening implements WireChain.Listener {
        @Override
        public void rows(String source, Samples samples) {
            Map<Channel, Double> values = latest.computeIfAbsent(source, name -> new HashMap<>());
            for (Channel channel : samples.channels()) {
                int[] rows = samples.presentRows(channel);
                if (rows.length > 0) {
                    values.put(channel, samples.value(channel, rows[rows.length - 1]));
                }
            }
        }

        @Override
        public void block(Block block) {
            // pulls are not looked for before a session begins
        }

        @Override
        public void said(ArrivalTime at, Finding finding) {
            if (finding.code() == FindingCode.WIRE_CONNECTED) {
                // the state of the source says so, and what was said before is no longer true
                said.clear();
                return;
            }
            FormPage.Said one = new FormPage.Said(finding.isError(), sentences.sentence(finding));
            said.remove(one);
            said.addLast(one);
            if (said.size() > MOST_SAID) {
                said.removeFirst();
            }
        }

        @Override
        public void fileComplete(Arrival.FileComplete file) {
            // seen by the watch of the source
        }
    }
}
