package org.nextpull.channel;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/**
 * A table of results, read.
 *
 * @param description how it was understood
 * @param rows good rows, in the order of the file
 * @param rowCount good and bad rows
 */
public record ResultTable(SourceDescription description, List<Row> rows, BlockReader.RowCount rowCount) {
    public ResultTable {
        rows = List.copyOf(rows);
    }

    /**
     * One pull of a table of results: numbers that somebody has on paper. At least one of torque and power is present, but for a row that
     * could not be used and in which knock was heard: that must not be forgotten.
     *
     * @param line line of the table, from 1
     * @param order order in the day; empty where the table has no such column
     * @param used whether the row counts
     */
    public record Row(
            long line,
            OptionalInt order,
            Optional<Advance> advance,
            Optional<Lambda> lambda,
            Optional<Torque> torque,
            Optional<Power> power,
            Optional<String> label,
            Optional<String> fuel,
            KnockMark knock,
            boolean used) {
        /** The row without what it made; its knock still forbids. */
        public Row withoutResult() {
            return new Row(line, order, advance, lambda, Optional.empty(), Optional.empty(), label, fuel, knock, used);
        }
    }
}
