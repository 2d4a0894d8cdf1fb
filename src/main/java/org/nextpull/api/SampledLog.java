package org.nextpull.api;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
 * A log in a format of one's own: rows of numbers, with what each column holds. It may be of any length, since its rows are taken one by
 * one. A cell that is not finite is one without a value; a row whose time does not rise, or is missing, is skipped and counted.
 */
public final class SampledLog implements Recording {
    private final String name;
    private final List<SampledColumn> columns;
    private final Rows rows;

    /** Where the rows come from. They are read more than once, so each call starts anew; the stream is closed after use. */
    @FunctionalInterface
    public interface Rows {
        /**
         * The rows from the first, in the order of time, each with a value a column.
         *
         * @throws IOException where they cannot be read; so does an {@link UncheckedIOException} on the way
         */
        Stream<double[]> open() throws IOException;
    }

    private SampledLog(String name, List<SampledColumn> columns, Rows rows) {
        this.name = name;
        this.columns = List.copyOf(columns);
        this.rows = rows;
    }

    /**
     * A log of those columns.
     *
     * @param name the name by which results and findings speak of it
     * @param columns what its columns hold, time among them, no channel twice
     * @param rows where its rows come from
     * @throws IllegalArgumentException without a column of time, or where a channel stands twice
     */
    public static SampledLog of(String name, List<SampledColumn> columns, Rows rows) {
        List<Channel> channels = columns.stream().map(SampledColumn::channel).toList();
        if (!channels.contains(Channel.of(Role.TIME))
                || channels.stream().distinct().count() < channels.size()) {
            throw new IllegalArgumentException("a log has a time, and no channel twice: "
                    + channels.stream().map(Channel::id).toList());
        }
        return new SampledLog(name, columns, rows);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public BlockReader open() throws IOException {
        return new Reader(rows.open());
    }

    private final class Reader implements BlockReader {
        private final Stream<double[]> stream;
        private final Iterator<double[]> left;
        private final List<Channel> channels =
                columns.stream().map(SampledColumn::channel).toList();
        private final int time = channels.indexOf(Channel.of(Role.TIME));
        private double before = Double.NEGATIVE_INFINITY;
        private long line;
        private long good;

        Reader(Stream<double[]> stream) {
            this.stream = stream;
            this.left = stream.iterator();
        }

        @Override
        public SourceDescription description() {
            return new SourceDescription(
                    name,
                    "UTF-8",
                    "",
                    '.',
                    columns.stream()
                            .map(column -> new SourceDescription.Column(
                                    column.channel().id(), Optional.of(column.channel()), Optional.of(column.unit())))
                            .toList());
        }

        @Override
        public Optional<Block> next() throws IOException {
            SamplesBuilder samples = Samples.builder(channels);
            try {
                while (samples.rows() < Block.MOST_ROWS && left.hasNext()) {
                    add(left.next(), samples);
                }
            } catch (UncheckedIOException broken) {
                throw broken.getCause();
            }
            return samples.rows() == 0 ? Optional.empty() : Optional.of(new Block(samples.build()));
        }

        private void add(double[] row, SamplesBuilder samples) {
            line++;
            if (row.length != columns.size()) {
                throw new IllegalArgumentException(
                        "row " + line + " of " + name + " has " + row.length + " values for " + columns.size());
            }
            if (!Double.isFinite(row[time]) || row[time] <= before) {
                return;
            }
            before = row[time];
            good++;
            samples.row(line);
            IntStream.range(0, row.length)
                    .filter(at -> Double.isFinite(row[at]))
                    .forEach(at -> samples.set(at, columns.get(at).unit().toSi(row[at])));
        }

        @Override
        public List<Finding> findings() {
            return List.of();
        }

        @Override
        public BlockReader.RowCount rowCount() {
            return new BlockReader.RowCount(good, line - good);
        }

        @Override
        public void close() {
            stream.close();
        }
    }
}
