package org.nextpull.report.text;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.Verdict;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.plan.Goal;
import org.nextpull.report.AdviceText;
import org.nextpull.report.CompareWords;
import org.nextpull.report.Shown;
import org.nextpull.session.CandidateDay;

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
        text.append(consumptions(day, response));
        return text.append('\n').toString();
    }

    private static String table(CandidateDay day, Goal.Response response) {
        TextTable table = new TextTable("candidate", "fuel", "setting", "decided by", "gain %", "from", "to");
        for (CandidateDay.State state : day.candidates()) {
            Optional<Chosen> chosen = state.swept().flatMap(Verdict::chosen);
            Optional<Comparison> gain = day.comparison()
                    .flatMap(told -> told.by(response).of(state.plan().label()));
            table.row(
                    state.plan().label(),
                    state.plan().fuel().orElse("-"),
                    chosen.map(Chosen::setting).map(AdviceText::setting).orElse("not yet swept"),
                    chosen.map(found -> found.by().id()).orElse("-"),
                    gain.map(one -> CompareWords.signed(one.difference().percent()))
                            .orElse("-"),
                    gain.map(one -> CompareWords.signed(
                                    one.difference().interval().low()))
                            .orElse("-"),
                    gain.map(one -> CompareWords.signed(
                                    one.difference().interval().high()))
                            .orElse("-"));
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

    private static String consumptions(CandidateDay day, Goal.Response response) {
        StringBuilder text = new StringBuilder();
        for (CandidateDay.State state : day.candidates()) {
            day.consumption(state, response)
                    .ifPresent(used -> text.append("The same power takes of ")
                            .append(state.plan().label())
                            .append(' ')
                            .append(Shown.fixed(used.mass(), 2))
                            .append(" times the mass of ")
                            .append(day.reference().label())
                            .append(times(used.volume(), ", ", " times the volume"))
                            .append(times(used.energy(), ", ", " times the energy"))
                            .append(times(used.cost(), ", and costs ", " times as much an hour"))
                            .append(".\n"));
        }
        return text.toString();
    }

    private static String times(OptionalDouble value, String before, String after) {
        return value.isPresent() ? before + Shown.fixed(value.getAsDouble(), 2) + after : "";
    }
}
