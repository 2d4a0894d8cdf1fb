package org.nextpull.intake.csv;

import java.util.Optional;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.Columns;
import org.nextpull.intake.ProbeColumn;

/**
 * Tells a table of results, one row a pull, from a log: it has a response (torque or power) and something that was varied (advance,
 * lambda, label, fuel); few rows; no time that runs as in a log; and no speed that sweeps.
 */
final class TableRecognition {
    static final int MOST_ROWS = 500;
    /** Rows of a table are pulls: its times lie at least so far apart. */
    private static final double LEAST_STEP_S = 20;
    /** A speed that varies by less than this share stays put. */
    private static final double STEADY = 0.1;

    private TableRecognition() {}

    static boolean isTable(Head head, Columns columns, LogHints hints) {
        boolean factor = columns.has(Role.ADVANCE)
                || columns.has(Role.LAMBDA)
                || columns.has(Role.AIR_FUEL_RATIO)
                || columns.has(Role.LABEL)
                || columns.has(Role.FUEL);
        return hasResponse(columns)
                && factor
                && head.complete()
                && head.rows().size() <= MOST_ROWS
                && (hints.sampleHz().isEmpty() || !hasSpeed(columns))
                && !timeRuns(head, columns)
                && !mayHaveTime(columns)
                && !speedSweeps(head, columns);
    }

    /** Whether few rows without time and speed stand where pulls of a log could not be found anyway. */
    static boolean hasFormOfTable(Head head, Columns columns) {
        return head.complete()
                && head.rows().size() <= MOST_ROWS
                && !columns.has(Role.TIME)
                && !mayHaveTime(columns)
                && !hasSpeed(columns);
    }

    /** Whether a column that is not understood runs as time does: rows of a table stand at no even steps. */
    private static boolean mayHaveTime(Columns columns) {
        return !isMarked(columns)
                && columns.findings().stream()
                        .filter(finding -> finding.code() == FindingCode.COLUMN_MAY_BE)
                        .anyMatch(finding -> finding.text("channel").equals(Optional.of(Role.TIME.id())));
    }

    private static boolean isMarked(Columns columns) {
        return columns.has(Role.ORDER) || columns.has(Role.USED);
    }

    /** Whether it says of each row what only a pull has, and has nothing of a log. */
    static boolean hasFormOfLongTable(Columns columns) {
        boolean marked =
                columns.has(Role.ORDER) || columns.has(Role.USED) || columns.has(Role.LABEL) || columns.has(Role.FUEL);
        return marked && !columns.has(Role.TIME) && !hasSpeed(columns) && hasResponse(columns);
    }

    static boolean hasResponse(Columns columns) {
        return columns.has(Role.TORQUE) || columns.has(Role.POWER);
    }

    /** A plan that gives the rate of its logs may still be asked about a table; what has no speed is of no use as a log. */
    private static boolean hasSpeed(Columns columns) {
        return columns.has(Role.ENGINE_SPEED) || columns.has(Role.ROLLER_SPEED) || columns.has(Role.ROAD_SPEED);
    }

    private static boolean timeRuns(Head head, Columns columns) {
        return probe(head, columns, Role.TIME)
                .map(probe -> stepSeconds(columns, probe) < LEAST_STEP_S)
                .orElse(false);
    }

    private static double stepSeconds(Columns columns, ProbeColumn probe) {
        return columns.mapped().stream()
                .filter(column -> column.channel().role() == Role.TIME)
                .mapToDouble(column -> column.toSi(probe.medianStep()))
                .findFirst()
                .orElse(0);
    }

    private static boolean speedSweeps(Head head, Columns columns) {
        return probe(head, columns, Role.ENGINE_SPEED)
                .filter(probe -> probe.count() > 0)
                .map(probe -> !isMarked(columns) && probe.greatest() - probe.least() > STEADY * probe.greatest())
                .orElse(false);
    }

    private static Optional<ProbeColumn> probe(Head head, Columns columns, Role role) {
        return columns.mapped().stream()
                .filter(column -> column.channel().role() == role)
                .findFirst()
                .map(column -> ProbeColumn.of(head.column(column.index()), head.style()));
    }
}
