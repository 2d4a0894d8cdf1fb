package org.nextpull.window.compared;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.app.ComparedLabels;
import org.nextpull.app.DayInput;
import org.nextpull.chart.DifferencePlot;
import org.nextpull.chart.OverlayPlot;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.finding.Finding;
import org.nextpull.plan.Goal;
import org.nextpull.report.CompareWords;
import org.nextpull.report.FindingLines;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.session.ComparedDay;
import org.nextpull.session.SessionResult;

/** Compares what was read, and says what came of it. Knows no file and no view. */
final class ComparedPresenter {
    private final Shown shown;

    ComparedPresenter(Shown shown) {
        this.shown = shown;
    }

    /** All that does not depend on the reader's units. */
    record Compared(ComparedDay day, SessionResult result, List<String> labels, List<Finding> findings) {
        Compared {
            labels = List.copyOf(labels);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Compares.
     *
     * @param against the label that the others are compared with; empty takes the one that ran first
     */
    static Compared compare(DayInput input, Optional<String> against) {
        SessionResult result = input.result();
        List<String> labels = ComparedLabels.labels(result, input.labels());
        ComparedDay day = ComparedLabels.of(result, input.labels(), against);
        List<Finding> findings = new ArrayList<>(input.findings());
        findings.addAll(day.outcome().findings());
        return new Compared(day, result, labels, findings);
    }

    /** The page. */
    Page page(Compared compared) {
        FindingLines lines = new FindingLines(FindingText.in(shown));
        Optional<MeasuredComparison> outcome = compared.day().outcome().value();
        if (outcome.isEmpty()) {
            List<Finding> why = new ArrayList<>(compared.findings());
            why.addAll(compared.result().findings());
            return Page.saying(
                    lines.lines(why.stream().filter(Finding::isError).distinct().toList()));
        }
        MeasuredComparison both = outcome.get();
        Goal.Response response = compared.result().plan().goal().response();
        CompareWords words = new CompareWords(shown, response, both);
        ComparisonResult result = words.deciding();
        List<String> basis = new ArrayList<>();
        words.groups(result).ifPresent(basis::add);
        result.scatters().stream().map(ComparedPresenter::scatter).forEach(basis::add);
        basis.add(CompareWords.drift(result));
        basis.addAll(lines.lines(compared.findings()));
        List<Comparison> withRows = both.torque().stream()
                .flatMap(torque -> torque.comparisons().stream())
                .filter(one -> !one.rows().isEmpty())
                .toList();
        return new Page(
                result.comparisons().stream().map(words::verdict).toList(),
                basis,
                withRows.stream().map(Comparison::label).toList(),
                OverlayPlot.of(both, shown.units()),
                DifferencePlot.of(both),
                withRows.stream().map(this::rows).toList());
    }

    private static String scatter(ComparisonResult.LabelScatter scatter) {
        return scatter.label() + ": " + Shown.count(scatter.pulls(), "pull") + ", repeats to "
                + Shown.fixed(scatter.scatter().percent(), 2) + " %.";
    }

    private List<Page.Row> rows(Comparison one) {
        return one.rows().stream().map(this::row).toList();
    }

    private Page.Row row(Comparison.RowDifference row) {
        return new Page.Row(
                Shown.fixed(row.rpm(), 0),
                shown.torque(row.levels().label()),
                shown.torque(row.levels().reference()),
                CompareWords.signed(row.percent()),
                CompareWords.signed(row.band().low()),
                CompareWords.signed(row.band().high()));
    }

    /**
     * A comparison in words and data; the view adds nothing.
     *
     * @param verdicts the verdict on each label, a sentence each; or why there is none
     * @param basis what the verdicts rest on, and how to go on
     * @param labels which label the rows of each difference are of
     * @param curves mean curves of all labels
     * @param differences the difference of each label over speed, in the order of {@code labels}
     * @param rows the difference of each label by speed, in the order of {@code labels}
     */
    record Page(
            List<String> verdicts,
            List<String> basis,
            List<String> labels,
            Optional<OverlayPlot> curves,
            List<DifferencePlot> differences,
            List<List<Row>> rows) {
        Page {
            verdicts = List.copyOf(verdicts);
            basis = List.copyOf(basis);
            labels = List.copyOf(labels);
            differences = List.copyOf(differences);
            rows = rows.stream().map(List::copyOf).toList();
        }

        /** One speed, as people read it. */
        record Row(String rpm, String label, String reference, String percent, String from, String to) {}

        /** Nothing but sentences. */
        static Page saying(List<String> sentences) {
            return new Page(sentences, List.of(), List.of(), Optional.empty(), List.of(), List.of());
        }
    }
}
