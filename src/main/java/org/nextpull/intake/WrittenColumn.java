package org.nextpull.intake;

import java.util.Arrays;
import java.util.BitSet;
import org.nextpull.channel.SamplesBuilder;

/** The cells of one column of a piece of a log, row by row, each by itself. Not for use by several threads at once. */
final class WrittenColumn {
    private final MappedColumn column;
    private double[] values;
    private final BitSet absent = new BitSet();
    private final BitSet impossible = new BitSet();
    /** Cells that are as they are: a word by its place, a time of a clock, yes or no. */
    private final BitSet settled = new BitSet();

    private boolean isSettled;

    WrittenColumn(MappedColumn column, int capacity) {
        this.column = column;
        this.values = new double[capacity];
    }

    MappedColumn column() {
        return column;
    }

    /** Where numbers may be put as they are written, row by row; good until it grows. */
    double[] written() {
        return values;
    }

    void grow() {
        values = Arrays.copyOf(values, 2 * values.length);
    }

    void clear() {
        absent.clear();
        impossible.clear();
        settled.clear();
        isSettled = false;
    }

    /** Takes a number as it is written. */
    void number(int row, double value) {
        values[row] = value;
    }

    /** Takes what is no number in the column's unit. */
    void settled(int row, double value) {
        values[row] = value;
        settled.set(row);
    }

    void absent(int row) {
        absent.set(row);
    }

    /** Forgets a cell of a row that is dropped. */
    void drop(int row) {
        settled.clear(row);
        absent.clear(row);
    }

    /** Turns what is written into the project's unit, once, and marks what no engine can have. */
    void settle(int rows) {
        if (isSettled || column.channel().role().isText()) {
            return;
        }
        isSettled = true;
        ExpectedValues.ValueRange possible = column.possible();
        if (settled.isEmpty()) {
            column.toSi(values, rows);
        } else {
            for (int row = settled.nextClearBit(0); row < rows; row = settled.nextClearBit(row + 1)) {
                values[row] = column.toSi(values[row]);
            }
        }
        int row = 0;
        while (row < rows && possible.holds(values[row])) {
            row++;
        }
        if (row < rows) {
            mark(possible, rows);
        }
    }

    private void mark(ExpectedValues.ValueRange possible, int rows) {
        for (int row = 0; row < rows; row++) {
            if (!settled.get(row) && !possible.holds(values[row]) && !absent.get(row)) {
                impossible.set(row);
            }
        }
    }

    boolean isPresent(int row) {
        return !absent.get(row) && !impossible.get(row);
    }

    boolean isSettled(int row) {
        return settled.get(row);
    }

    /** The first row from there on whose value no engine can have; negative where there is none. */
    int nextImpossible(int row) {
        return impossible.nextSetBit(row);
    }

    /** What a cell holds that is present. */
    double value(int row) {
        return values[row];
    }

    /** Puts the cells of some rows into samples, from a row on that was started. */
    void put(int first, int end, SamplesBuilder into, int at, int channelIndex) {
        int row = first;
        while (row < end) {
            int gap = nextGap(row, end);
            into.set(at + row - first, channelIndex, values, row, gap);
            row = gap + 1;
        }
    }

    /** The first row from there on, at the latest an end, whose cell is not present. */
    int nextGap(int row, int end) {
        return Math.min(next(absent, row, end), next(impossible, row, end));
    }

    static int next(BitSet rows, int from, int end) {
        int next = rows.nextSetBit(from);
        return next < 0 ? end : Math.min(next, end);
    }
}
