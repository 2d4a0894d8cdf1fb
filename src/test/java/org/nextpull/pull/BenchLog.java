package org.nextpull.pull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Recording;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;

/**
 * An invented log with a known truth, for tests: rows are written one after the other by small moves (idle, sweep, hold). The engine
 * of the log has a torque of 205 - 9e-6 (n - 4600)^2 N.m at full load; every number is invented.
 */
public final class BenchLog implements Recording {
    public static final Channel TIME = Channel.of(Role.TIME);
    public static final Channel SPEED = Channel.of(Role.ENGINE_SPEED);
    public static final Channel TORQUE = Channel.of(Role.TORQUE);
    public static final Channel THROTTLE = Channel.of(Role.THROTTLE);
    public static final Channel LAMBDA = Channel.of(Role.LAMBDA);
    public static final Channel ADVANCE = Channel.of(Role.ADVANCE);

    private final Random random;
    private final double hz;
    private final List<Map<Channel, Double>> rows = new ArrayList<>();
    private final List<Channel> channels = new ArrayList<>(List.of(TIME, SPEED, TORQUE, THROTTLE));
    private double speedNoise;
    private double torqueNoise;
    private double time;
    private double advance = 24;
    private double torqueFactor = 1;

    public BenchLog(double hz, long seed) {
        this.hz = hz;
        this.random = new Random(seed);
    }

    /** Torque at full load in N.m: the truth. */
    public static double torque(double rpm) {
        return 205 - 9e-6 * (rpm - 4600) * (rpm - 4600);
    }

    public BenchLog noise(double rpm, double newtonMetres) {
        speedNoise = rpm;
        torqueNoise = newtonMetres;
        return this;
    }

    public BenchLog torqueFactor(double factor) {
        torqueFactor = factor;
        return this;
    }

    public BenchLog advance(double deg) {
        if (!channels.contains(ADVANCE)) {
            channels.add(ADVANCE);
        }
        advance = deg;
        return this;
    }

    /** Writes rows for that long: speed by time since the start of the move, and a throttle. */
    public BenchLog move(double seconds, DoubleUnaryOperator rpm, double throttle) {
        return move(seconds, rpm, throttle, value -> torque(value));
    }

    public BenchLog move(double seconds, DoubleUnaryOperator rpm, double throttle, DoubleUnaryOperator fullTorque) {
        long count = Math.round(seconds * hz);
        for (int row = 0; row < count; row++) {
            double speed = rpm.applyAsDouble(row / hz);
            double torque = throttle >= 0.9 ? fullTorque.applyAsDouble(speed) : 40 * throttle;
            Map<Channel, Double> cells = new LinkedHashMap<>();
            cells.put(TIME, time);
            cells.put(SPEED, speed + speedNoise * random.nextGaussian());
            cells.put(TORQUE, torque * torqueFactor + torqueNoise * random.nextGaussian());
            cells.put(THROTTLE, throttle);
            if (channels.contains(ADVANCE)) {
                cells.put(ADVANCE, advance);
            }
            rows.add(cells);
            time += 1 / hz;
        }
        return this;
    }

    public BenchLog idle(double seconds) {
        return move(seconds, t -> 1500, 0.1);
    }

    /** Full load from one speed to another at a rate in rpm/s. */
    public BenchLog sweep(double fromRpm, double toRpm, double rate) {
        double sign = Math.signum(toRpm - fromRpm);
        return move(Math.abs(toRpm - fromRpm) / rate, t -> fromRpm + sign * rate * t, 1);
    }

    public BenchLog hold(double rpm, double seconds) {
        return move(seconds, t -> rpm, 1);
    }

    /** A pull with idling before and after it. */
    public BenchLog pull(double fromRpm, double toRpm, double rate) {
        return idle(3).sweep(fromRpm, toRpm, rate).idle(3);
    }

    /** Takes rows out by their number. */
    public BenchLog drop(Predicate<Integer> gone) {
        List<Map<Channel, Double>> kept = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            if (!gone.test(row)) {
                kept.add(rows.get(row));
            }
        }
        rows.clear();
        rows.addAll(kept);
        return this;
    }

    /** Changes a cell. */
    public BenchLog set(int row, Channel channel, double value) {
        rows.get(row).put(channel, value);
        return this;
    }

    /** Leaves a cell blank. */
    public BenchLog blank(int row, Channel channel) {
        rows.get(row).remove(channel);
        return this;
    }

    /** Adds a channel that follows from the others of the row. */
    public BenchLog with(Channel channel, ToDoubleFunction<Map<Channel, Double>> rule) {
        channels.add(channel);
        rows.forEach(cells -> cells.put(channel, rule.applyAsDouble(cells)));
        return this;
    }

    public BenchLog without(Channel channel) {
        channels.remove(channel);
        rows.forEach(cells -> cells.remove(channel));
        return this;
    }

    /** Leaves a channel only in every so many rows. */
    public BenchLog thinned(Map<Channel, Integer> every) {
        for (int row = 0; row < rows.size(); row++) {
            for (Map.Entry<Channel, Integer> thin : every.entrySet()) {
                if (row % thin.getValue() != 0) {
                    rows.get(row).remove(thin.getKey());
                }
            }
        }
        return this;
    }

    public BenchLog restartClock() {
        time = 0;
        return this;
    }

    public BenchLog skip(double seconds) {
        time += seconds;
        return this;
    }

    public int rows() {
        return rows.size();
    }

    public double time() {
        return time;
    }

    public double value(int row, Channel channel) {
        return Objects.requireNonNull(rows.get(row).get(channel));
    }

    public Samples samples() {
        return samples(0, rows.size());
    }

    private Samples samples(int first, int end) {
        SamplesBuilder builder = Samples.builder(channels);
        for (int row = first; row < end; row++) {
            builder.row(row + 2);
            rows.get(row).forEach((channel, value) -> {
                if (channels.contains(channel)) {
                    builder.set(channel, value);
                }
            });
        }
        return builder.build();
    }

    /** The rows in blocks of that many. */
    public List<Block> blocks(int size) {
        List<Block> blocks = new ArrayList<>();
        for (int first = 0; first < rows.size(); first += size) {
            blocks.add(new Block(samples(first, Math.min(rows.size(), first + size))));
        }
        return blocks;
    }

    public FoundPulls found(PullRules rules) {
        return found(rules, Block.MOST_ROWS);
    }

    public FoundPulls found(PullRules rules, int blockSize) {
        PullFinder finder = new PullFinder(name(), rules);
        List<Candidate> candidates = new ArrayList<>();
        blocks(blockSize).forEach(block -> candidates.addAll(finder.accept(block)));
        candidates.addAll(finder.finish());
        return new FoundPulls(candidates, finder.thrownAway(), finder.findings());
    }

    @Override
    public String name() {
        return "bench.csv";
    }

    @Override
    public BlockReader open() {
        List<Block> blocks = blocks(1000);
        List<SourceDescription.Column> columns = channels.stream()
                .map(channel -> new SourceDescription.Column(channel.id(), Optional.of(channel), Optional.empty()))
                .toList();
        return new BlockReader() {
            private int next;

            @Override
            public SourceDescription description() {
                return new SourceDescription(name(), "UTF-8", ",", '.', columns);
            }

            @Override
            public Optional<Block> next() {
                return next < blocks.size() ? Optional.of(blocks.get(next++)) : Optional.empty();
            }

            @Override
            public List<Finding> findings() {
                return List.of();
            }

            @Override
            public BlockReader.RowCount rowCount() {
                return new BlockReader.RowCount(rows.size(), 0);
            }

            @Override
            public void close() {}
        };
    }
}
