package org.nextpull.window.compared;

import java.util.List;
import java.util.Optional;
import org.nextpull.chart.DifferencePlot;
import org.nextpull.chart.OverlayPlot;

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
record ComparedPage(
        List<String> verdicts,
        List<String> basis,
        List<String> labels,
        Optional<OverlayPlot> curves,
        List<DifferencePlot> differences,
        List<List<Row>> rows) {
    ComparedPage {
        verdicts = List.copyOf(verdicts);
        basis = List.copyOf(basis);
        labels = List.copyOf(labels);
        differences = List.copyOf(differences);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** One speed, as people read it. */
    record Row(String rpm, String label, String reference, String percent, String from, String to) {}

    /** Nothing but sentences. */
    static ComparedPage saying(List<String> sentences) {
        return new ComparedPage(sentences, List.of(), List.of(), Optional.empty(), List.of(), List.of());
    }
}
