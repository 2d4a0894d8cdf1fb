package org.nextpull.report.text;

import java.util.Optional;
import org.nextpull.advice.Chosen;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.plan.Goal;
import org.nextpull.report.AdviceText;
import org.nextpull.report.CandidateWords;
import org.nextpull.report.CompareWords;
import org.nextpull.report.Shown;
import org.nextpull.session.CandidateDay;
import org.nextpull.unit.Quantity;

/** What a day says of its candidates side by side: each at its own best, and what the decision runs tell. */
final class CandidateText {
    private final Shown shown;

    CandidateText(Shown shown) {
        this.shown = shown;
    }

    String text(CandidateDay day, Goal.Response response) {
        StringBuilder text = new StringBuilder("Candidates, each at its own best; the first is the reference:\n");
        text.append(table(day, response));
        if (!day.isDeciding()) {
            return text.append('\n').toString();
        }
        text.append("Decision runs: ")
                .append(day.done())
                .append(" of ")
                .append(day.order().size());
        text.append(", in the order ").append(String.join(" ", day.order())).append(".\n");
        day.comparison().ifPresent(told -> text.append(verdicts(told, day.isDecided(), response)));
        CandidateWords words = new CandidateWords(day, response);
        words.shares().forEach(line -> text.append(line).append('\n'));
        words.consumptions().forEach(line -> text.append(line).append('\n'));
        day.comparison()
                .flatMap(MeasuredComparison::torque)
                .ifPresent(told -> text.append(new CompareText(shown).rows(told)));
        return text.append('\n').toString();
    }

    private String table(CandidateDay day, Goal.Response response) {
        TextTable table = new TextTable(
                "candidate", "fuel", "setting", "decided by", "gain %", "from", "to", "exhaust", "knock heard");
        for (CandidateDay.State state : day.candidates()) {
            Optional<Comparison.Difference> gain = day.gain(state, response).map(Comparison::difference);
            table.row(
                    state.plan().label(),
                    state.plan().fuel().orElse("-"),
                    state.chosen().map(Chosen::setting).map(AdviceText::setting).orElse("not yet swept"),
                    state.chosen().map(found -> found.by().id()).orElse("-"),
                    gain.map(one -> CompareWords.signed(one.percent())).orElse("-"),
                    gain.map(one -> CompareWords.signed(one.interval().low())).orElse("-"),
                    gain.map(one -> CompareWords.signed(one.interval().high())).orElse("-"),
                    state.hottestExhaust()
                            .map(exhaust -> shown.value(Quantity.TEMPERATURE, exhaust.kelvins()))
                            .orElse("-"),
                    state.knockRpm().map(CandidateWords::knock).orElse("-"));
        }
        return table.text();
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
