package org.nextpull.report.csv;

import java.util.List;
import org.nextpull.report.PullColumn;
import org.nextpull.session.SessionResult;

/**
 * The pulls of a day as a table of results, one row a pull, corrected band averages in N.m and kW: what {@code advise} and {@code compare}
 * read back. Pulls without a figure are left out, since a row of such a table has a response, but for those whose knock must not be lost.
 */
public final class PullsCsv {
    private static final List<PullColumn> COLUMNS = List.of(
            PullColumn.NUMBER,
            PullColumn.ADVANCE,
            PullColumn.OFFSET,
            PullColumn.LAMBDA,
            PullColumn.MEAN_TORQUE,
            PullColumn.MEAN_POWER,
            PullColumn.LABEL,
            PullColumn.FUEL,
            PullColumn.KNOCK,
            PullColumn.KNOCK_FROM,
            PullColumn.KNOCK_TO,
            PullColumn.USED,
            PullColumn.STANDING,
            PullColumn.CORRECTION,
            PullColumn.SOURCE,
            PullColumn.LINE,
            PullColumn.NOTE);

    private PullsCsv() {}

    /** The table. */
    public static String of(SessionResult result) {
        StringBuilder text = new StringBuilder(
                CsvLine.of(COLUMNS.stream().map(PullColumn::fileHeading).toList()));
        result.pulls().stream()
                .filter(pull -> pull.figures().isPresent()
                        || (pull.knock().isHeard() && pull.setting().advance().isPresent()))
                .forEach(pull -> text.append(CsvLine.of(
                        COLUMNS.stream().map(column -> column.fileCell(pull)).toList())));
        return text.toString();
    }
}
