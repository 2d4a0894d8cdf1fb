package org.nextpull.intake.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.channel.Block;
import org.nextpull.channel.Channel;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.ColumnReader;

/** A chain and all that came out of it. */
final class Played implements WireChain.Listener {
    private static final ColumnReader READER = new ColumnReader();

    private final WireChain chain;
    private final List<String> rows = new ArrayList<>();
    private final List<Samples> merged = new ArrayList<>();
    private final List<Samples> early = new ArrayList<>();
    private final List<Finding> said = new ArrayList<>();
    private final List<Arrival.FileComplete> files = new ArrayList<>();

    Played(WireSource... sources) {
        this.chain = new WireChain(List.of(sources), LogHints.none(), READER, this);
    }

    static ArrivalTime at(double seconds) {
        long ns = Math.round(seconds * 1e9);
        return new ArrivalTime(ns, 1_700_000_000_000L + ns / 1_000_000);
    }

    Played connected(String source, double seconds) {
        chain.accept(new Arrival.Connected(source, at(seconds)));
        return this;
    }

    Played text(String source, double seconds, String text) {
        chain.accept(Chunk.of(source, at(seconds), text));
        return this;
    }

    Played accept(Arrival arrival) {
        chain.accept(arrival);
        return this;
    }

    Played tick(double seconds) {
        chain.tick(at(seconds));
        return this;
    }

    Played finish(double seconds) {
        chain.finish(at(seconds));
        return this;
    }

    WireChain chain() {
        return chain;
    }

    /** All merged rows, each as one text with every cell. */
    List<String> rows() {
        return rows;
    }

    List<Samples> merged() {
        return merged;
    }

    List<Samples> early() {
        return early;
    }

    List<Finding> said() {
        return said;
    }

    List<FindingCode> codes() {
        return said.stream().map(Finding::code).toList();
    }

    List<Arrival.FileComplete> files() {
        return files;
    }

    /** The present values of a channel in all merged rows. */
    List<Double> values(Role role) {
        return valuesOf(Channel.of(role));
    }

    List<Double> valuesOf(Channel channel) {
        List<Double> result = new ArrayList<>();
        for (Samples samples : merged) {
            for (double value : samples.presentValues(channel)) {
                result.add(value);
            }
        }
        return result;
    }

    OptionalDouble value(int row, Role role) {
        int left = row;
        for (Samples samples : merged) {
            if (left < samples.rows()) {
                return samples.find(Channel.of(role), left);
            }
            left -= samples.rows();
        }
        throw new IndexOutOfBoundsException(row);
    }

    @Override
    public void rows(String source, Samples samples) {
        early.add(samples);
    }

    @Override
    public void block(Block block) {
        Samples samples = block.samples();
        merged.add(samples);
        for (int row = 0; row < samples.rows(); row++) {
            StringBuilder text = new StringBuilder();
            for (Channel channel : samples.channels()) {
                if (samples.isPresent(channel, row)) {
                    text.append(channel.id())
                            .append('=')
                            .append(samples.value(channel, row))
                            .append(' ');
                }
            }
            rows.add(text.toString());
        }
    }

    @Override
    public void said(ArrivalTime at, Finding finding) {
        said.add(finding);
    }

    @Override
    public void fileComplete(Arrival.FileComplete file) {
        files.add(file);
    }
}
