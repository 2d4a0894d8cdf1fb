package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.advice.RowOptimum;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.report.AnswerText;
import org.nextpull.report.Shown;
import org.nextpull.session.SessionResult;

/** MBT by speed. */
final class RowsPart {
    private final SessionResult result;

    RowsPart(SessionResult result) {
        this.result = result;
    }

    Section section() {
        return result.verdict()
                .flatMap(Verdict::timing)
                .filter(answer -> !answer.rows().isEmpty() || !answer.openRows().isEmpty())
                .map(this::rows)
                .orElse(Section.of("MBT by speed"));
    }

    private Section rows(SweepAnswer answer) {
        Grid grid = Grid.of("MBT of each row with its own 90 % interval", "rpm", "deg", "from", "to");
        for (RowOptimum row : answer.rows()) {
            grid = grid.row(
                    Shown.fixed(row.rpm(), 0),
                    Shown.fixed(row.bestDeg(), 1),
                    Shown.fixed(row.intervalDeg().low(), 1),
                    Shown.fixed(row.intervalDeg().high(), 1));
        }
        List<String> paragraphs = new ArrayList<>();
        if (!answer.rows().isEmpty()) {
            paragraphs.add(
                    answer.rowsProven()
                            ? "A pull with this table confirmed it."
                            : "Not proven: no pull with this table has confirmed it.");
        }
        paragraphs.addAll(AnswerText.openRows(answer));
        return Section.of("MBT by speed" + CandidatePart.swept(result))
                .withParagraphs(paragraphs)
                .withGrids(answer.rows().isEmpty() ? List.of() : List.of(grid));
    }
}
