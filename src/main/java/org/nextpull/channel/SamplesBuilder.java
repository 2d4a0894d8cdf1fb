package org.nextpull.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Gathers rows of {@link Samples}; not for use by several threads. */
public final class SamplesBuilder {
    private static final int FIRST_CAPACITY = 256;

    private final List<Channel> channels;
    private final int[] firstSensors;
    /** Empty while no row has a word, as in most logs. */
    private final List<Optional<String>> labels = new ArrayList<>();

    private final List<Optional<String>> fuels = new ArrayList<>();
    private long[] lines = new long[0];
    private final double[][] values;
    private final BitSet[] present;
    private int rows;
    /** Rows that there is room for as soon as there is one. */
    private int capacity = FIRST_CAPACITY;
    /** Rows of other samples that are to be copied together. */
    private Optional<Samples> waiting = Optional.empty();

    private int waitingFirst;
    private int waitingEnd;

    SamplesBuilder(List<Channel> channels) {
        this.channels = List.copyOf(channels);
        this.firstSensors = Samples.firstSensors(this.channels);
        this.values = new double[channels.size()][];
        this.present = new BitSet[channels.size()];
        clear();
    }

    private void clear() {
        lines = new long[0];
        for (int index = 0; index < present.length; index++) {
            values[index] = new double[0];
            present[index] = new BitSet(capacity);
        }
        labels.clear();
        fuels.clear();
        rows = 0;
    }

    /** Starts a row without words. */
    public SamplesBuilder row(long line) {
        return row(line, Optional.empty(), Optional.empty());
    }

    /** Starts a row; {@link #set} then fills its cells. */
    public SamplesBuilder row(long line, Optional<String> label, Optional<String> fuel) {
        copyWaiting();
        room(rows + 1);
        word(labels, label);
        word(fuels, fuel);
        lines[rows++] = line;
        return this;
    }

    /**
     * Starts rows without words.
     *
     * @param from their lines from {@code first} to before {@code end}
     */
    public SamplesBuilder rows(long[] from, int first, int end) {
        if (!labels.isEmpty() || !fuels.isEmpty()) {
            for (int row = first; row < end; row++) {
                row(from[row]);
            }
            return this;
        }
        copyWaiting();
        room(rows + end - first);
        System.arraycopy(from, first, lines, rows, end - first);
        rows += end - first;
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
    public SamplesBuilder set(Channel channel, double value) {
        return set(
                channel.sensor() == 1 ? firstSensors[Samples.place(channel.role())] : channels.indexOf(channel), value);
    }

    /**
     * Sets a cell of the row started last, by the channel's place in the list.
     *
     * @param channelIndex from 0
     * @param value finite, in the project's unit of the quantity
     * @throws IllegalArgumentException for NaN or an infinite value
     */
    public SamplesBuilder set(int channelIndex, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a sample must be finite; leave the cell out instead");
        }
        copyWaiting();
        return set(rows - 1, channelIndex, value);
    }

    /** Sets a cell of any row that was started; as {@link #set(int, double)}. */
    public SamplesBuilder set(int row, int channelIndex, double value) {
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
    public SamplesBuilder set(int row, int channelIndex, double[] from, int first, int end) {
        System.arraycopy(from, first, values[channelIndex], row, end - first);
        present[channelIndex].set(row, row + end - first);
        return this;
    }

    /** Adds a row of other samples, taking the channels that both have. */
    public SamplesBuilder appendRow(Samples from, int row) {
        return appendRows(from, row, row + 1);
    }

    /** Adds the rows from {@code first} (inclusive) to {@code end} (exclusive) of other samples, as {@link #appendRow}. */
    public SamplesBuilder appendRows(Samples from, int first, int end) {
        boolean follows = first == waitingEnd && waiting.isPresent() && waiting.get() == from;
        if (!follows) {
            copyWaiting();
            waiting = Optional.of(from);
            waitingFirst = first;
        }
        waitingEnd = end;
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
    void append(Samples from, int first, int end) {
        int count = end - first;
        if (lines.length == 0) {
            // mostly they are all that come
            resize(count);
        }
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

    /** The samples gathered so far without copying them, in arrays that may be twice as long as they are many; the builder starts anew. */
    public Samples take() {
        copyWaiting();
        if (lines.length > 2 * rows) {
            Samples few = build();
            clear();
            return few;
        }
        Samples samples = new Samples(
                channels,
                firstSensors,
                rows,
                lines,
                values.clone(),
                present.clone(),
                List.copyOf(labels),
                List.copyOf(fuels));
        capacity = Math.max(capacity, rows);
        clear();
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
                rows,
                Arrays.copyOf(lines, rows),
                copies,
                bits,
                List.copyOf(labels),
                List.copyOf(fuels));
    }

    private void room(int wanted) {
        if (wanted > lines.length) {
            resize(Math.max(wanted, Math.max(capacity, lines.length * 2)));
        }
    }

    private void resize(int length) {
        lines = Arrays.copyOf(lines, length);
        for (int index = 0; index < values.length; index++) {
            values[index] = Arrays.copyOf(values[index], length);
        }
    }
}
