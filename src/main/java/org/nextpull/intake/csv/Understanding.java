package org.nextpull.intake.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.ColumnTable;
import org.nextpull.intake.Columns;
import org.nextpull.intake.NumberStyle;
import org.nextpull.intake.ProbeColumn;

/** Understands one source from its first part: a log, a table of results, or neither and why. */
final class Understanding {
    /** No engine is logged below this: read so, a comma stands between thousands. */
    private static final double SLOWEST_RPM = 100;

    /** Far more than the channels of any logger. Common practice, no source. */
    private static final int MOST_COLUMNS = 2048;

    private final ByteSource source;
    private final FirstPart part;
    private final ColumnReader reader;
    private final LogHints hints;

    Understanding(ByteSource source, FirstPart part, ColumnReader reader, LogHints hints) {
        this.source = source;
        this.part = part;
        this.reader = reader;
        this.hints = hints;
    }

    /** Of a line that does not end within what is looked at to understand a log. */
    private Outcome<Input> lineTooLong(long line) {
        return failed(FindingCode.LINE_TOO_LONG, line, Detail.of("most", part.charsOfOpenLine()));
    }

    private Outcome<Input> tooWide(long line, int wide) {
        return failed(FindingCode.FILE_TOO_WIDE, line, Detail.of("count", wide), Detail.of("most", MOST_COLUMNS));
    }

    Outcome<Input> input() {
        Optional<Head> found = new HeadFinder(reader, hints).find(part.text(), part.complete());
        if (found.isEmpty()) {
            return withoutHeader();
        }
        Head head = found.get();
        if (SettingsFile.isHeader(head.header().fields())) {
            return failed(FindingCode.FILE_IS_SETTINGS, head.header().line());
        }
        int wide = head.header().fields().size();
        if (wide > MOST_COLUMNS) {
            return tooWide(head.header().line(), wide);
        }
        if (head.rows().isEmpty() && !part.complete()) {
            return lineTooLong(head.lastHeadLine() + 1);
        }
        if (head.rows().isEmpty()) {
            return failed(FindingCode.FILE_WITHOUT_ROWS, head.header().line());
        }
        int widest = head.rows().stream()
                .mapToInt(TextRow::filled)
                .sorted()
                .skip(head.rows().size() / 2)
                .findFirst()
                .orElse(0);
        if (widest > head.header().fields().size()) {
            return failed(
                    FindingCode.ROWS_WIDER_THAN_HEADER,
                    head.header().line(),
                    Detail.of("header_fields", head.header().fields().size()),
                    Detail.of("row_fields", widest));
        }
        if (widest < head.header().filled() && head.separator() == Separator.BLANKS) {
            return failed(
                    FindingCode.ROWS_NARROWER_THAN_HEADER,
                    head.header().line(),
                    Detail.of("header_fields", head.header().filled()),
                    Detail.of("row_fields", widest));
        }
        Columns columns = columns(head);
        if (head.styleDoubtful()) {
            Columns withThousands = columns(withStyle(head, NumberStyle.point()));
            if (isTooSlow(head, columns)) {
                head = withStyle(head, NumberStyle.point());
                columns = withThousands;
            }
        }
        return input(head, columns);
    }

    private Outcome<Input> withoutHeader() {
        boolean isOneLine = part.text().lines().limit(2).count() == 1;
        if (isOneLine && !part.complete() && !part.endsWithLine()) {
            return lineTooLong(1);
        }
        int wide = Separator.mostFields(part.text().lines().findFirst().orElse(""));
        return wide > MOST_COLUMNS ? tooWide(1, wide) : failed(FindingCode.FILE_WITHOUT_HEADER, 1);
    }

    private Outcome<Input> input(Head head, Columns columns) {
        List<Finding> findings = new ArrayList<>();
        if (head.styleDoubtful() && head.style().decimal() == ',') {
            findings.add(Finding.warning(FindingCode.COMMA_DOUBTFUL, Place.inFile(source.name())));
        }
        findings.addAll(columns.findings());
        if (TableRecognition.isTable(head, columns, hints)) {
            return new ResultTableReader(source.name(), part.encoding(), head, columns).read(findings);
        }
        Optional<Finding> missing = missing(head, columns);
        if (missing.isPresent()) {
            findings.add(0, missing.get());
            return Outcome.failed(findings);
        }
        OptionalDouble rate = columns.has(Role.TIME) ? OptionalDouble.empty() : hints.sampleHz();
        if (!columns.has(Role.TIME)) {
            findings.add(
                    rate.isPresent()
                            ? Finding.note(
                                    FindingCode.TIME_FROM_RATE,
                                    Place.inFile(source.name()),
                                    Detail.of("hz", rate.getAsDouble()))
                            : Finding.warning(FindingCode.TIME_MISSING, header(head)));
        }
        CsvLog log = new CsvLog(source, part.encoding(), head, columns, reader, rate, findings);
        return Outcome.of(new Input.Log(log, log.description()));
    }

    private Optional<Finding> missing(Head head, Columns columns) {
        if (TableRecognition.hasFormOfTable(head, columns)) {
            return Optional.of(tableNotUnderstood(head, columns));
        }
        boolean roller = columns.has(Role.ROLLER_SPEED) || columns.has(Role.ROAD_SPEED);
        if (!columns.has(Role.TORQUE) && !columns.has(Role.POWER) && !roller) {
            return Optional.of(Finding.error(FindingCode.LOG_WITHOUT_TORQUE, header(head), headers(head)));
        }
        if (TableRecognition.hasFormOfLongTable(columns)) {
            return Optional.of(Finding.error(
                    FindingCode.TABLE_TOO_LONG, header(head), Detail.of("most", TableRecognition.MOST_ROWS)));
        }
        if (!columns.has(Role.ENGINE_SPEED) && !roller) {
            return Optional.of(Finding.error(FindingCode.LOG_WITHOUT_SPEED, header(head), headers(head)));
        }
        boolean blank = columns.mapped().stream()
                .filter(column -> column.channel().role() != Role.TIME)
                .filter(column -> !column.channel().role().isText())
                .allMatch(column -> ProbeColumn.of(head.column(column.index()), head.style())
                        .isBlank());
        return head.complete() && blank
                ? Optional.of(Finding.error(FindingCode.FILE_WITHOUT_VALUES, Place.inFile(source.name())))
                : Optional.empty();
    }

    /** A table of results in form, of which either what was varied or what came of it is not known. */
    private Finding tableNotUnderstood(Head head, Columns columns) {
        List<String> unknown = columns.described().stream()
                .filter(column -> column.channel().isEmpty() && !column.header().isEmpty())
                .map(SourceDescription.Column::header)
                .toList();
        return Finding.error(
                FindingCode.TABLE_NOT_UNDERSTOOD,
                header(head),
                Detail.of(
                        "missing",
                        TableRecognition.hasResponse(columns) ? "advance, lambda, label or fuel" : "torque or power"),
                Detail.few("unknown", unknown.isEmpty() ? List.of("-") : unknown));
    }

    private Place header(Head head) {
        return Place.atLine(source.name(), head.header().line());
    }

    private static Detail headers(Head head) {
        return Detail.few(
                "headers",
                head.header().fields().stream()
                        .map(String::strip)
                        .filter(header -> !header.isEmpty())
                        .toList());
    }

    private Columns columns(Head head) {
        List<String> headers = head.header().fields();
        List<ProbeColumn> probes = IntStream.range(0, headers.size())
                .mapToObj(index -> ProbeColumn.of(head.column(index), head.style()))
                .toList();
        return reader.read(
                new ColumnTable(
                        source.name(),
                        head.header().line(),
                        headers,
                        head.units().fields(),
                        probes),
                hints);
    }

    private static boolean isTooSlow(Head head, Columns columns) {
        return columns.mapped().stream()
                .filter(column -> column.channel().role() == Role.ENGINE_SPEED)
                .map(column -> ProbeColumn.of(head.column(column.index()), head.style()))
                .anyMatch(probe -> probe.count() > 0 && probe.median() < SLOWEST_RPM);
    }

    private static Head withStyle(Head head, NumberStyle style) {
        return new Head(
                head.separator(),
                style,
                head.styleDoubtful(),
                head.header(),
                head.units(),
                head.lastHeadLine(),
                head.rows(),
                head.leastFields(),
                head.complete());
    }

    private <T> Outcome<T> failed(FindingCode code, long line, Detail... details) {
        return Outcome.failed(Finding.error(code, Place.atLine(source.name(), line), details));
    }
}
