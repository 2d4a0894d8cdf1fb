package org.nextpull.channel;

import java.util.List;

/**
 * A table of results, read.
 *
 * @param description how it was understood
 * @param rows good rows, in the order of the file
 * @param rowCount good and bad rows
 */
public record ResultTable(SourceDescription description, List<ResultRow> rows, RowCount rowCount) {
    public ResultTable {
        rows = List.copyOf(rows);
    }
}
