package org.nextpull.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;

/**
 * Immutable samples of several channels over the same rows, in the project's units. A cell may be absent: sensors are logged at
 * different rates, and broken cells are left out rather than guessed.
 */
public final class Samples {
    private static final int ROLES = Role.values().length;

    private final List<Channel> channels;
    private final int[] firstSensors;
    private final long[] lines;
    private final double[][] values;
    private final BitSet[] present;
    private final List<Optional<String>> labels;
    private final List<Optional<String>> fuels;

    private Samples(
            List<Channel> channels,
            int[] firstSensors,
            long[] lines,
            double[][] values,
            BitSet[] present,
            List<Optional<String>> labels,
            List<Optional<String>> fuels) {
        this.channels = channels;
        this.firstSensors = firstSensors;
        this.lines = lines;
        this.values = values;
        this.present = present;
        this.labels = labels;
        this.fuels = fuels;
    }

    /** A builder for those channels, whose order {@link Builder#set(int, double)} counts in. */
    public static Builder builder(List<Channel> channels) {
        return new Builder(channels);
    }

    public int rows() {
        return lines.length;
    }

    /** The numeric channels. */
    public List<Channel> channels() {
        return channels;
    }

    public boolean has(Channel channel) {
        return index(channel) >= 0;
    }

    /** Place of a channel, which is asked for in every row: found without comparing channels, but for the rare further sensors. */
    private int index(Channel channel) {
        return channel.sensor() == 1 ? firstSensors[place(channel.role())] : channels.indexOf(channel);
    }

    /** An array over the roles is looked up in every row; no text and no file holds these places. */
    @SuppressWarnings("EnumOrdinal")
    private static int place(Role role) {
        return role.ordinal();
    }

    private static int[] firstSensors(List<Channel> channels) {
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
        return index < 0 ? Cells.NONE : new Cells(values[index], present[index], rows());
    }

    /** The present values of a channel in the project's unit of its quantity, in row order; empty when the channel is not logged. */
    public double[] presentValues(Channel channel) {
        int index = index(channel);
        if (index < 0) {
            return new double[0];
        }
        BitSet rows = present[index];
        double[] found = new double[rows.cardinality()];
        int count = 0;
        for (int row = rows.nextSetBit(0); row >= 0; row = rows.nextSetBit(row + 1)) {
            found[count++] = values[index][row];
        }
        return found;
    }

    /** The rows in which a channel is present, ascending. */
    public int[] presentRows(Channel channel) {
        int index = index(channel);
        return index < 0 ? new int[0] : present[index].stream().toArray();
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
        Builder builder = builder(channels);
        builder.append(this, first, end);
        return builder.build();
    }

    /**
     * The same with every present cell of a channel read anew.
     *
     * @param cell the value of a row in the project's unit; empty leaves the cell out
     */
    public Samples reread(Channel channel, IntFunction<OptionalDouble> cell) {
        int index = channels.indexOf(channel);
        double[][] newValues = values.clone();
        BitSet[] newPresent = present.clone();
        newValues[index] = values[index].clone();
        newPresent[index] = new BitSet(rows());
        for (int row : presentRows(channel)) {
            OptionalDouble value = cell.apply(row);
            if (value.isPresent()) {
                newValues[index][row] = value.getAsDouble();
                newPresent[index].set(row);
            }
        }
        return new Samples(channels, firstSensors, lines, newValues, newPresent, labels, fuels);
    }

    /** The cells of one channel, row by row. */
    public static final class Cells {
        static final Cells NONE = new Cells(new double[0], new BitSet(), 0);

        private final double[] values;
        private final BitSet present;
        private final boolean full;

        private Cells(double[] values, BitSet present, int rows) {
            this.values = values;
            this.present = present;
            this.full = rows > 0 && present.nextClearBit(0) >= rows;
        }

        /** Whether that cell holds a number. */
        public boolean isPresent(int row) {
            return full || present.get(row);
        }

        /** A cell that is known to be present, in the project's unit of its quantity. */
        public double value(int row) {
            return values[row];
        }
    }

    /** Gathers rows; not for use by several threads. */
    public static final class Builder {
        private static final int FIRST_CAPACITY = 256;

        private final List<Channel> channels;
        private final int[] firstSensors;
        /** Empty while no row has a word, as in most logs. */
        private final List<Optional<String>> labels = new ArrayList<>();

        private final List<Optional<String>> fuels = new ArrayList<>();
        private long[] lines = new long[FIRST_CAPACITY];
        private final double[][] values;
        private final BitSet[] present;
        private int rows;
        /** Rows of other samples that are to be copied together. */
        private Optional<Samples> waiting = Optional.empty();

        private int waitingFirst;
        private int waitingEnd;

        private Builder(List<Channel> channels) {
            this.channels = List.copyOf(channels);
            this.firstSensors = Samples.firstSensors(this.channels);
            this.values = new double[channels.size()][FIRST_CAPACITY];
            this.present = new BitSet[channels.size()];
            for (int index = 0; index < present.length; index++) {
                present[index] = new BitSet();
            }
        }

        /** Starts a row without words. */
        public Builder row(long line) {
            return row(line, Optional.empty(), Optional.empty());
        }

        /** Starts a row; {@link #set} then fills its cells. */
        public Builder row(long line, Optional<String> label, Optional<String> fuel) {
            copyWaiting();
            room(rows + 1);
            word(labels, label);
            word(fuels, fuel);
            lines[rows++] = line;
            return this;
        }

        private void word(List<Optional<String>> words, Optional<String> word) {
            if (word.isPresent() && words.isEmpty()) {
                words.addAll(Collections.nCopies(rows, Optional.empty()));
            }
            if (word.isPresent() || !words.isEmpty()) {
                words.add(word);
            }
        }

        /**
         * Sets a cell of the row started last.
         *
         * @param channel one of those that the builder was made for
         * @param value finite, in the project's unit of the quantity
         * @throws IllegalArgumentException for NaN or an infinite value
         */
        public Builder set(Channel channel, double value) {
            return set(channel.sensor() == 1 ? firstSensors[place(channel.role())] : channels.indexOf(channel), value);
        }

        /**
         * Sets a cell of the row started last, by the channel's place in the list.
         *
         * @param channelIndex from 0
         * @param value finite, in the project's unit of the quantity
         * @throws IllegalArgumentException for NaN or an infinite value
         */
        public Builder set(int channelIndex, double value) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a sample must be finite; leave the cell out instead");
            }
            copyWaiting();
            return set(rows - 1, channelIndex, value);
        }

        /** Sets a cell of any row that was started; as {@link #set(int, double)}. */
        public Builder set(int row, int channelIndex, double value) {
            values[channelIndex][row] = value;
            present[channelIndex].set(row);
            return this;
        }

        /**
         * Sets cells of a channel in rows that were started, one after the other.
         *
         * @param row the first of the rows
         * @param from the cells from {@code first} to before {@code end}, finite, in the project's unit of the quantity
         */
        public Builder set(int row, int channelIndex, double[] from, int first, int end) {
            System.arraycopy(from, first, values[channelIndex], row, end - first);
            present[channelIndex].set(row, row + end - first);
            return this;
        }

        /** Adds a row of other samples, taking the channels that both have. */
        public Builder appendRow(Samples from, int row) {
            boolean follows = row == waitingEnd && waiting.isPresent() && waiting.get() == from;
            if (!follows) {
                copyWaiting();
                waiting = Optional.of(from);
                waitingFirst = row;
            }
            waitingEnd = row + 1;
            return this;
        }

        private void copyWaiting() {
            if (waiting.isPresent()) {
                Samples from = waiting.get();
                waiting = Optional.empty();
                append(from, waitingFirst, waitingEnd);
                waitingFirst = waitingEnd;
            }
        }

        /** Adds the rows from {@code first} (inclusive) to {@code end} (exclusive) of other samples, taking the channels that both have. */
        private void append(Samples from, int first, int end) {
            int count = end - first;
            room(rows + count);
            if (!(labels.isEmpty() && from.labels.isEmpty() && fuels.isEmpty() && from.fuels.isEmpty())) {
                int before = rows;
                for (int row = first; row < end; row++, rows++) {
                    word(labels, from.label(row));
                    word(fuels, from.fuel(row));
                }
                rows = before;
            }
            System.arraycopy(from.lines, first, lines, rows, count);
            for (int index = 0; index < values.length; index++) {
                int source = from.index(channels.get(index));
                if (source >= 0) {
                    System.arraycopy(from.values[source], first, values[index], rows, count);
                    copyPresent(from.present[source], first, end, present[index]);
                }
            }
            rows += count;
        }

        /** By stretches of cells that are present, which mostly is one. */
        private void copyPresent(BitSet from, int first, int end, BitSet to) {
            int row = from.nextSetBit(first);
            while (row >= 0 && row < end) {
                int absent = Math.min(end, from.nextClearBit(row));
                to.set(rows + row - first, rows + absent - first);
                row = from.nextSetBit(absent);
            }
        }

        public int rows() {
            return rows + waitingEnd - waitingFirst;
        }

        /** The samples gathered so far, without copying full arrays; the builder starts anew. */
        public Samples take() {
            copyWaiting();
            double[][] taken = new double[values.length][];
            BitSet[] bits = new BitSet[present.length];
            for (int index = 0; index < values.length; index++) {
                taken[index] = rows == values[index].length ? values[index] : Arrays.copyOf(values[index], rows);
                values[index] = new double[Math.max(rows, FIRST_CAPACITY)];
                bits[index] = present[index];
                present[index] = new BitSet(values[index].length);
            }
            long[] takenLines = rows == lines.length ? lines : Arrays.copyOf(lines, rows);
            lines = new long[Math.max(rows, FIRST_CAPACITY)];
            Samples samples = new Samples(
                    channels, firstSensors, takenLines, taken, bits, List.copyOf(labels), List.copyOf(fuels));
            labels.clear();
            fuels.clear();
            rows = 0;
            return samples;
        }

        /** The samples gathered so far; the builder may go on. */
        public Samples build() {
            copyWaiting();
            double[][] copies = new double[values.length][];
            BitSet[] bits = new BitSet[present.length];
            for (int index = 0; index < values.length; index++) {
                copies[index] = Arrays.copyOf(values[index], rows);
                bits[index] = (BitSet) present[index].clone();
            }
            return new Samples(
                    channels,
                    firstSensors,
                    Arrays.copyOf(lines, rows),
                    copies,
                    bits,
                    List.copyOf(labels),
                    List.copyOf(fuels));
        }

        private void room(int wanted) {
            if (wanted <= lines.length) {
                return;
            }
            int capacity = Math.max(wanted, lines.length * 2);
            lines = Arrays.copyOf(lines, capacity);
            for (int index = 0; index < values.length; index++) {
                values[index] = Arrays.copyOf(values[index], capacity);
            }
        }
    }
}
