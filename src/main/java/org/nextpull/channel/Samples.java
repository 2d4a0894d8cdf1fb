package org.nextpull.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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

    public Optional<String> label(int row) {
        return labels.isEmpty() ? Optional.empty() : labels.get(row);
    }

    public Optional<String> fuel(int row) {
        return fuels.isEmpty() ? Optional.empty() : fuels.get(row);
    }

    /** The rows from {@code first} (inclusive) to {@code end} (exclusive). */
    public Samples slice(int first, int end) {
        Builder builder = builder(channels);
        for (int row = first; row < end; row++) {
            builder.appendRow(this, row);
        }
        return builder.build();
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
            if (rows == lines.length) {
                grow();
            }
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
            values[channelIndex][rows - 1] = value;
            present[channelIndex].set(rows - 1);
            return this;
        }

        /** Adds a row of other samples, taking the channels that both have. */
        public Builder appendRow(Samples from, int row) {
            row(from.line(row), from.label(row), from.fuel(row));
            boolean alike = from.channels.equals(channels);
            for (int index = 0; index < channels.size(); index++) {
                int source = alike ? index : from.index(channels.get(index));
                if (source >= 0 && from.present[source].get(row)) {
                    set(index, from.values[source][row]);
                }
            }
            return this;
        }

        public int rows() {
            return rows;
        }

        /** The samples gathered so far, without copying full arrays; the builder starts anew. */
        public Samples take() {
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

        private void grow() {
            int capacity = rows * 2;
            lines = Arrays.copyOf(lines, capacity);
            for (int index = 0; index < values.length; index++) {
                values[index] = Arrays.copyOf(values[index], capacity);
            }
        }
    }
}
