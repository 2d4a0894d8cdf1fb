package org.nextpull.report.text;

import org.nextpull.compare.MeasuredComparison;
import org.nextpull.plan.Goal;
import org.nextpull.report.CandidateWords;
import org.nextpull.report.CompareWords;
import org.nextpull.report.Shown;
import org.nextpull.session.CandidateDay;
import org.nextpull.session.SessionResult;

/** What a day says of its candidates side by side: each at its own best, and what the decision runs tell. */
final class CandidateText {
    private final Shown shown;

    CandidateText(Shown shown) {
        this.shown = shown;
    }

    String text(CandidateDay day, SessionResult result) {
        Goal.Response response = result.plan().goal().response();
        StringBuilder text = new StringBuilder("Candidates, each at its own best; the first is the reference:\n");
        CandidateWords words = new CandidateWords(day, response, shown);
        TextTable table = new TextTable(CandidateWords.heads().toArray(String[]::new));
        day.candidates().forEach(state -> table.row(words.row(state).toArray(String[]::new)));
        text.append(table.text());
        words.sweeps(result).forEach(line -> text.append(line).append('\n'));
        words.knockLimits().forEach(line -> text.append(line).append('\n'));
        if (!day.isDeciding()) {
            return text.append('\n').toString();
        }
        text.append(words.runs()).append('\n');
        day.comparison().ifPresent(told -> text.append(verdicts(told, day.isDecided(), response)));
        words.shares().forEach(line -> text.append(line).append('\n'));
        words.consumptions().forEach(line -> text.append(line).append('\n'));
        day.comparison()
                .flatMap(MeasuredComparison::torque)
                .ifPresent(told -> text.append(new CompareText(shown).rows(told)));
        return text.append('\n').toString();
    }

    private String verdicts(MeasuredComparison told, boolean decided, Goal.Response response) {
        CompareWords words = new CompareWords(shown, response, told);
        StringBuilder text = new StringBuilder();
        words.deciding()
                .comparisons()
                .forEach(one -> text.append(decided ? words.standing(one) : words.verdict(one))
                        .append('\n'));
        words.groups(words.deciding()).ifPresent(line -> text.append(line).append('\n'));
        return text.toString();
    }
}
