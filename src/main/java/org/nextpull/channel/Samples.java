package org.nextpull.channel;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Immutable samples of several channels over the same rows, in the project's units. A cell may be absent: sensors are logged at
 * different rates, and broken cells are left out rather than guessed.
 */
public final class Samples {
    private static final int ROLES = Role.values().length;

    private final List<Channel> channels;
    private final int[] firstSensors;
    private final int rows;
    /** There may be more of them, and of the values, than rows. */
    final long[] lines;

    final double[][] values;
    final BitSet[] present;
    final List<Optional<String>> labels;
    final List<Optional<String>> fuels;

    Samples(
            List<Channel> channels,
            int[] firstSensors,
            int rows,
            long[] lines,
            double[][] values,
            BitSet[] present,
            List<Optional<String>> labels,
            List<Optional<String>> fuels) {
        this.channels = channels;
        this.firstSensors = firstSensors;
        this.rows = rows;
        this.lines = lines;
        this.values = values;
        this.present = present;
        this.labels = labels;
        this.fuels = fuels;
    }

    /** Samples in memory, for those who may have them elsewhere. */
    public record AtHand(Samples get) implements Supplier<Samples> {}

    /** A builder for those channels, whose order {@link SamplesBuilder#set(int, double)} counts in. */
    public static SamplesBuilder builder(List<Channel> channels) {
        return new SamplesBuilder(channels);
    }

    public int rows() {
        return rows;
    }

    /** The numeric channels. */
    public List<Channel> channels() {
        return channels;
    }

    public boolean has(Channel channel) {
        return index(channel) >= 0;
    }

    /** Place of a channel, which is asked for in every row: found without comparing channels, but for the rare further sensors. */
    int index(Channel channel) {
        return channel.sensor() == 1 ? firstSensors[place(channel.role())] : channels.indexOf(channel);
    }

    /** An array over the roles is looked up in every row; no text and no file holds these places. */
    @SuppressWarnings("EnumOrdinal")
    static int place(Role role) {
        return role.ordinal();
    }

    static int[] firstSensors(List<Channel> channels) {
        int[] places = new int[ROLES];
        Arrays.fill(places, -1);
        for (int index = channels.size() - 1; index >= 0; index--) {
            if (channels.get(index).sensor() == 1) {
                places[place(channels.get(index).role())] = index;
            }
        }
        return places;
    }

    /** Line of the source that the row came from, from 1. */
    public long line(int row) {
        return lines[row];
    }

    /** Whether that cell holds a number. */
    public boolean isPresent(Channel channel, int row) {
        int index = index(channel);
        return index >= 0 && present[index].get(row);
    }

    /**
     * A cell that is known to be present, in the project's unit of its quantity.
     *
     * @param row from 0 to below {@link #rows}
     * @throws IllegalStateException when it is not
     */
    public double value(Channel channel, int row) {
        int index = index(channel);
        if (index < 0 || !present[index].get(row)) {
            throw new IllegalStateException("no value of " + channel.id() + " in row " + row);
        }
        return values[index][row];
    }

    /** A cell in the project's unit of its quantity; empty where it is absent or the channel is not logged. */
    public OptionalDouble find(Channel channel, int row) {
        int index = index(channel);
        return index >= 0 && present[index].get(row) ? OptionalDouble.of(values[index][row]) : OptionalDouble.empty();
    }

    /** A cell of the first sensor of a role; empty where it is absent or there is none. */
    public OptionalDouble find(Role role, int row) {
        int index = firstSensors[place(role)];
        return index >= 0 && present[index].get(row) ? OptionalDouble.of(values[index][row]) : OptionalDouble.empty();
    }

    /** The cells of a channel, none of them present where it is not logged: for loops over many rows. */
    public Cells cells(Channel channel) {
        int index = index(channel);
        return index < 0 ? Cells.NONE : new Cells(values[index], present[index], rows);
    }

    /** The present values of a channel in the project's unit of its quantity, in row order; empty when the channel is not logged. */
    public double[] presentValues(Channel channel) {
        int index = index(channel);
        if (index < 0) {
            return new double[0];
        }
        BitSet cells = present[index];
        if (cells.nextClearBit(0) >= rows) {
            return Arrays.copyOf(values[index], rows);
        }
        double[] found = new double[cells.cardinality()];
        int count = 0;
        for (int row = cells.nextSetBit(0); row >= 0; row = cells.nextSetBit(row + 1)) {
            found[count++] = values[index][row];
        }
        return found;
    }

    /** The rows in which a channel is present, ascending. */
    public int[] presentRows(Channel channel) {
        int index = index(channel);
        if (index < 0) {
            return new int[0];
        }
        BitSet cells = present[index];
        if (cells.nextClearBit(0) >= rows) {
            return IntStream.range(0, rows).toArray();
        }
        int[] found = new int[cells.cardinality()];
        int count = 0;
        for (int row = cells.nextSetBit(0); row >= 0; row = cells.nextSetBit(row + 1)) {
            found[count++] = row;
        }
        return found;
    }

    /** Whether any row has a label or a fuel. */
    public boolean hasWords() {
        return !labels.isEmpty() || !fuels.isEmpty();
    }

    public Optional<String> label(int row) {
        return labels.isEmpty() ? Optional.empty() : labels.get(row);
    }

    public Optional<String> fuel(int row) {
        return fuels.isEmpty() ? Optional.empty() : fuels.get(row);
    }

    /** The rows from {@code first} (inclusive) to {@code end} (exclusive). */
    public Samples slice(int first, int end) {
        SamplesBuilder builder = builder(channels);
        builder.append(this, first, end);
        return builder.take();
    }

    /**
     * The same with other cells of a channel.
     *
     * @param cellRows the rows in which it has one
     * @param cells the value in each of them, in the project's unit; there may be more
     */
    public Samples reread(Channel channel, int[] cellRows, double[] cells) {
        int index = channels.indexOf(channel);
        double[][] newValues = values.clone();
        BitSet[] newPresent = present.clone();
        newValues[index] = new double[rows];
        newPresent[index] = new BitSet(rows);
        for (int cell = 0; cell < cellRows.length; cell++) {
            newValues[index][cellRows[cell]] = cells[cell];
            newPresent[index].set(cellRows[cell]);
        }
        return new Samples(channels, firstSensors, rows, lines, newValues, newPresent, labels, fuels);
    }

    /** The cells of one channel, row by row. */
    public static final class Cells {
        static final Cells NONE = new Cells(new double[0], new BitSet(), 0);

        final double[] values;
        final BitSet present;
        private final boolean full;
        private final boolean none;

        private Cells(double[] values, BitSet present, int rows) {
            this.values = values;
            this.present = present;
            this.full = rows > 0 && present.nextClearBit(0) >= rows;
            this.none = present.isEmpty();
        }

        /** Whether that cell holds a number. */
        public boolean isPresent(int row) {
            return full || (!none && present.get(row));
        }

        /** A cell that is known to be present, in the project's unit of its quantity. */
        public double value(int row) {
            return values[row];
        }
    }
}
