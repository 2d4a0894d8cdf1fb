package org.nextpull.report.text;

import java.util.List;
import java.util.Optional;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;
import org.nextpull.pull.Candidate;
import org.nextpull.report.FindingLines;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.session.SourcePulls;
import org.nextpull.unit.Unit;

/** What {@code inspect} prints: how each file was understood and the pulls in it. */
public final class InspectText {
    /** Columns that are not used and still have a line each. */
    private static final int MOST_UNUSED = 40;

    private static final int FEW = 5;

    private final FindingText sentences;

    public InspectText(Shown shown) {
        this.sentences = FindingText.in(shown);
    }

    /** One log. */
    public String log(SourcePulls source) {
        StringBuilder text = new StringBuilder(source.name() + ": a log\n");
        source.description()
                .ifPresent(description ->
                        text.append(how(description) + rows(source) + "\n" + columns(description.columns())));
        return text + "\n" + pulls(source) + findings(source.findings());
    }

    private static String rows(SourcePulls source) {
        String rate = source.sampleHz().isPresent()
                ? ", " + Shown.count(source.sampleHz().getAsDouble(), "row") + " a second"
                : "";
        return rows(source.rowCount()) + rate + "\n";
    }

    private static String rows(BlockReader.RowCount count) {
        return "  " + Shown.count(count.good(), "row") + ", " + count.bad() + " skipped as broken";
    }

    /** One table of results. */
    public String table(ResultTable table) {
        return table.description().name() + ": a table of results, one row a pull\n" + how(table.description())
                + rows(table.rowCount()) + "\n\n" + columns(table.description().columns());
    }

    private static String how(SourceDescription description) {
        return "  " + description.encoding() + ", separator " + mark(description.separator()) + ", decimal mark "
                + mark(String.valueOf(description.decimal()))
                + "\n";
    }

    private static String mark(String sign) {
        return switch (sign) {
            case "\t" -> "tab";
            case " " -> "blank";
            case "," -> "comma";
            case ";" -> "semicolon";
            case "|" -> "bar";
            case "." -> "point";
            case "" -> "none";
            default -> sign;
        };
    }

    /** Those that are not used have a line each where they are few; of many the first few are named in one. */
    private static String columns(List<SourceDescription.Column> columns) {
        TextTable table = new TextTable("  column", "read as", "unit");
        List<String> unused = columns.stream()
                .filter(column -> column.channel().isEmpty())
                .map(SourceDescription.Column::header)
                .toList();
        boolean isGathered = unused.size() > MOST_UNUSED;
        for (SourceDescription.Column column : columns) {
            if (column.channel().isPresent() || !isGathered) {
                table.row(
                        "  " + column.header(),
                        column.channel().map(Channel::id).orElse("not used"),
                        column.unit().map(Unit::sign).orElse(""));
            }
        }
        return isGathered
                ? table.text() + "  not used: " + String.join(", ", unused.subList(0, FEW)) + " and "
                        + (unused.size() - FEW) + " more\n"
                : table.text();
    }

    private String pulls(SourcePulls source) {
        List<Candidate> candidates = source.candidates();
        if (candidates.isEmpty()) {
            return "  no pull was found in " + source.name() + "\n";
        }
        TextTable table = new TextTable("  pull", "lines", "rpm", "kind", "seconds", "use");
        for (Candidate candidate : candidates) {
            table.row(
                    "  " + candidate.number(),
                    candidate.firstLine() + " to " + candidate.lastLine(),
                    Shown.fixed(candidate.fromRpm(), 0) + " to " + Shown.fixed(candidate.toRpm(), 0),
                    candidate.kind().id().replace('-', ' '),
                    Shown.fixed(candidate.durationS(), 1),
                    use(candidate));
        }
        List<Finding> findings = candidates.stream()
                .flatMap(candidate -> candidate.findings().stream())
                .toList();
        return table.text() + new FindingLines(sentences).text(findings).indent(2);
    }

    private String use(Candidate candidate) {
        return Optional.of(candidate)
                .flatMap(Candidate::refusal)
                .map(refusal -> "rejected: " + sentences.sentence(refusal.finding()))
                .orElse("used");
    }

    private String findings(List<Finding> findings) {
        return findings.isEmpty()
                ? ""
                : "\n" + new FindingLines(sentences).text(findings).indent(2);
    }
}
