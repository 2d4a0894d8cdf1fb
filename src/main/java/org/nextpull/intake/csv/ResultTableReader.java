package org.nextpull.intake.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.Role;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.GatheredFindings;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.Columns;
import org.nextpull.intake.Encoding;
import org.nextpull.intake.MappedColumn;
import org.nextpull.intake.NumberReader;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/** Reads a table of results. A row without a response, or with a cell that cannot be read, is skipped and named. */
final class ResultTableReader {
    private final String name;
    private final Encoding encoding;
    private final Head head;
    private final Columns columns;
    private final NumberReader numbers;

    ResultTableReader(String name, Encoding encoding, Head head, Columns columns) {
        this.name = name;
        this.encoding = encoding;
        this.head = head;
        this.columns = columns;
        this.numbers = new NumberReader(head.style());
    }

    /** Reads the rows; {@code before} are the findings on the columns. */
    Outcome<Input> read(List<Finding> before) {
        GatheredFindings findings = new GatheredFindings();
        findings.add(Finding.note(FindingCode.FILE_IS_TABLE, Place.inFile(name)));
        findings.addAll(before);
        List<ResultTable.Row> rows = new ArrayList<>();
        long bad = 0;
        long good = 0;
        for (TextRow row : head.rows()) {
            if (row.filled() == 0) {
                continue;
            }
            RowCells cells = new RowCells(row, numbers);
            ResultTable.Row result = row(row, cells);
            if (cells.broken().isEmpty()) {
                rows.add(result);
                good++;
            } else {
                bad++;
                findings.add(broken(row, cells.broken().getAsInt()));
                if (result.knock() == KnockMark.HEARD && result.advance().isPresent()) {
                    rows.add(result.withoutResult());
                }
            }
        }
        if (rows.isEmpty()) {
            findings.add(Finding.error(FindingCode.FILE_WITHOUT_VALUES, Place.inFile(name)));
            return Outcome.failed(findings.findings());
        }
        SourceDescription description = new SourceDescription(
                name, encoding.name(), head.separator().shown(), head.style().decimal(), columns.described());
        return Outcome.of(new Input.Table(
                new ResultTable(description, rows, new BlockReader.RowCount(good, bad)), findings.findings()));
    }

    private ResultTable.Row row(TextRow row, RowCells cells) {
        OptionalDouble torque = value(cells, Role.TORQUE);
        OptionalDouble power = value(cells, Role.POWER);
        if (torque.isEmpty() && power.isEmpty()) {
            cells.breakAt(index(Role.TORQUE).orElseGet(() -> index(Role.POWER).orElse(0)));
        }
        OptionalInt order = cells.whole(index(Role.ORDER).isPresent() ? index(Role.ORDER) : index(Role.RUN));
        return new ResultTable.Row(
                row.line(),
                order,
                value(cells, Role.ADVANCE).stream().mapToObj(Advance::ofDeg).findFirst(),
                value(cells, Role.LAMBDA).stream().mapToObj(Lambda::of).findFirst(),
                torque.stream().mapToObj(Torque::ofNewtonMetres).findFirst(),
                power.stream().mapToObj(Power::ofWatts).findFirst(),
                cells.word(index(Role.LABEL)),
                cells.word(index(Role.FUEL)),
                cells.knock(index(Role.KNOCK_EVENTS).isPresent() ? index(Role.KNOCK_EVENTS) : index(Role.KNOCK_LEVEL)),
                cells.yesNo(index(Role.USED)).orElse(true));
    }

    /** A cell in the project's unit; one that no engine can have breaks the row. */
    private OptionalDouble value(RowCells cells, Role role) {
        Optional<MappedColumn> column = column(role);
        if (column.isEmpty()) {
            return OptionalDouble.empty();
        }
        int index = column.get().index();
        OptionalDouble written = cells.number(OptionalInt.of(index));
        if (written.isEmpty()) {
            return written;
        }
        if (!column.get().isPossible(written.getAsDouble())) {
            cells.breakAt(index);
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(column.get().toSi(written.getAsDouble()));
    }

    private Finding broken(TextRow row, int index) {
        String header = head.header().field(index);
        return Finding.warning(
                FindingCode.TABLE_ROW_BROKEN,
                Place.atLine(name, row.line()).withColumn(index + 1).withKey(header),
                Detail.of("header", header),
                Detail.of("value", row.field(index)));
    }

    private OptionalInt index(Role role) {
        return column(role).stream().mapToInt(MappedColumn::index).findFirst();
    }

    private Optional<MappedColumn> column(Role role) {
        return columns.mapped().stream()
                .filter(column -> column.channel().role() == role)
                .findFirst();
    }
}
