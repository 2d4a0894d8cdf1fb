package org.nextpull.intake;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Role;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/** Makes values in the project's unit of the cells of one column, row after row. Not for use by several threads. */
final class ColumnCells {
    private final MappedColumn column;
    private final int place;
    private final int channelIndex;
    private final LineNumbers impossible = new LineNumbers();
    private OptionalDouble total = OptionalDouble.empty();
    private double value;

    /**
     * Prepares to read a column.
     *
     * @param place its place among the columns that are read
     * @param channelIndex place of its channel among the numeric ones; negative for words
     */
    ColumnCells(MappedColumn column, int place, int channelIndex) {
        this.column = column;
        this.place = place;
        this.channelIndex = channelIndex;
    }

    Role role() {
        return column.channel().role();
    }

    int place() {
        return place;
    }

    int channelIndex() {
        return channelIndex;
    }

    /** Looks at the cell of the next row; whether it holds a value. One that no engine can have leaves the cell absent. */
    boolean see(WrittenRows rows, int row) {
        WrittenColumn cells = rows.column(place);
        if (cells.nextImpossible(row) == row) {
            impossible.add(rows.lines()[row]);
        }
        if (!cells.isPresent(row)) {
            return false;
        }
        value = cells.value(row);
        if (column.reading() == MappedColumn.Reading.RUNNING_TOTAL && !cells.isSettled(row)) {
            value = sinceRowBefore(value);
        }
        return true;
    }

    /** The value of the cell seen last, where it holds one. */
    double value() {
        return value;
    }

    private double sinceRowBefore(double newTotal) {
        double added = total.isEmpty() ? 0 : newTotal - total.getAsDouble();
        total = OptionalDouble.of(newTotal);
        return added < 0 ? newTotal : added;
    }

    /**
     * Puts the cells of rows into samples.
     *
     * @param first the first of the rows
     * @param end behind the last
     * @param air pressure of the air in each, Pa; asked for where the column is one above that
     * @param into where a row was started for each of them last
     */
    void put(WrittenRows rows, int first, int end, double[] air, SamplesBuilder into) {
        int at = into.rows() - (end - first);
        if (column.reading() != MappedColumn.Reading.AS_IT_STANDS) {
            boolean isAboveAir = column.reading() == MappedColumn.Reading.ABOVE_AIR;
            for (int row = first; row < end; row++) {
                if (see(rows, row)) {
                    into.set(at + row - first, channelIndex, isAboveAir ? value + air[row - first] : value);
                }
            }
            return;
        }
        WrittenColumn cells = rows.column(place);
        for (int row = cells.nextImpossible(first); row >= 0 && row < end; row = cells.nextImpossible(row + 1)) {
            impossible.add(rows.lines()[row]);
        }
        cells.put(first, end, into, at, channelIndex);
    }

    /** The impossible values of the column so far. */
    Optional<Finding> finding(String name) {
        return impossible.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.warning(
                        FindingCode.VALUES_IMPOSSIBLE,
                        Place.atLine(name, impossible.firstLine()).withKey(column.header()),
                        impossible.details(
                                Detail.of("header", column.header()),
                                Detail.of("channel", column.channel().id()))));
    }
}
