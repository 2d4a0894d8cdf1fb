package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Recording;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.WireChain;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.WireFacts;

/** Reads the wires of a plan as a live session does, with times of the reader's choice, and keeps what comes out. For one thread. */
final class WireReading implements WireChain.Listener {
    private final List<Block> blocks = new ArrayList<>();
    private final List<Finding> said = new ArrayList<>();
    private final WireChain chain;

    /** Reads the wires of a plan, one source each. */
    WireReading(SweepPlan plan, List<String> names) {
        List<WireSource> sources = new ArrayList<>();
        for (int index = 0; index < names.size(); index++) {
            WireSource.LineSettings lines = plan.wires().isEmpty()
                    ? WireSource.LineSettings.withHeaderLine()
                    : lines(plan.wires().get(index));
            sources.add(WireSource.port(names.get(index), lines, "115200 8N1"));
        }
        this.chain = new WireChain(sources, plan.log().hints(), new ColumnReader(), this);
    }

    private static WireSource.LineSettings lines(WireFacts wire) {
        return new WireSource.LineSettings(wire.lines(), wire.columns(), wire.delayS(), 0);
    }

    private static ArrivalTime at(double seconds) {
        long ns = Math.round(seconds * 1e9);
        return new ArrivalTime(ns, 1_700_000_000_000L + ns / 1_000_000);
    }

    void connected(String name, double seconds) {
        chain.accept(new Arrival.Connected(name, at(seconds)));
    }

    void bytes(String name, double seconds, byte[] buffer, int length) {
        chain.accept(Chunk.copyOf(name, at(seconds), buffer, length));
    }

    void tick(double seconds) {
        chain.tick(at(seconds));
    }

    void finish(double seconds) {
        chain.finish(at(seconds));
    }

    List<Finding> said() {
        return said;
    }

    /** What was read, as a recording. */
    Recording recording() {
        return new Recording() {
            @Override
            public String name() {
                return "wires";
            }

            @Override
            public BlockReader open() {
                return new Reader(new ArrayList<>(blocks));
            }
        };
    }

    @Override
    public void rows(String source, org.nextpull.channel.Samples samples) {
        // only merged rows are looked at
    }

    @Override
    public void block(Block block) {
        blocks.add(block);
    }

    @Override
    public void said(ArrivalTime at, Finding finding) {
        said.add(finding);
    }

    @Override
    public void fileComplete(Arrival.FileComplete file) {
        throw new AssertionError("no file is sent");
    }

    private record Reader(List<Block> left) implements BlockReader {
        @Override
        public SourceDescription description() {
            return new SourceDescription("wires", "UTF-8", "", '.', List.of());
        }

        @Override
        public Optional<Block> next() {
            return left.isEmpty() ? Optional.empty() : Optional.of(left.remove(0));
        }

        @Override
        public List<Finding> findings() {
            return List.of();
        }

        @Override
        public BlockReader.RowCount rowCount() {
            return new BlockReader.RowCount(0, 0);
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}
