package org.nextpull.report.text;

import java.util.stream.Collectors;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.plan.Goal;
import org.nextpull.report.CandidateWords;
import org.nextpull.report.CompareWords;
import org.nextpull.report.Shown;
import org.nextpull.session.CandidateDay;
import org.nextpull.session.ComparedDay;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Quantity;

/** What {@code compare} prints: the verdict on each label first, then what it rests on. */
public final class CompareText {
    private final Shown shown;

    public CompareText(Shown shown) {
        this.shown = shown;
    }

    /** The comparison of a day. */
    public String text(ComparedDay day, MeasuredComparison both, Goal.Response response) {
        CompareWords words = new CompareWords(shown, response, both);
        ComparisonResult result = words.deciding();
        StringBuilder text = new StringBuilder();
        for (Comparison one : result.comparisons()) {
            text.append(words.verdict(one)).append('\n');
        }
        words.groups(result).ifPresent(line -> text.append(line).append('\n'));
        words.further(result).forEach(line -> text.append(line).append('\n'));
        text.append(basis(day, result));
        both.torque().ifPresent(torque -> text.append(rows(torque)));
        return text.toString();
    }

    private static String basis(ComparedDay day, ComparisonResult result) {
        TextTable table = new TextTable("label", "pulls", "repeats to %");
        for (ComparisonResult.LabelScatter scatter : result.scatters()) {
            table.row(
                    scatter.label(),
                    String.valueOf(scatter.pulls()),
                    Shown.fixed(scatter.scatter().percent(), 2));
        }
        return "\n" + table.text() + CompareWords.drift(result) + "\n"
                + (day.orderFrom() == SessionResult.OrderFrom.COMMAND_LINE
                        ? CompareWords.order(day.orderFrom()) + "\n"
                        : "");
    }

    /** Each label by speed; of torque. */
    String rows(ComparisonResult torque) {
        return torque.comparisons().stream().map(one -> rows(one, torque)).collect(Collectors.joining());
    }

    private String rows(Comparison one, ComparisonResult result) {
        if (one.rows().isEmpty()) {
            return "";
        }
        String unit = shown.unit(Quantity.TORQUE).sign();
        TextTable table = new TextTable(
                "rpm", one.label() + " " + unit, result.reference().label() + " " + unit, "%", "from", "to");
        for (Comparison.RowDifference row : one.rows()) {
            table.row(
                    Shown.fixed(row.rpm(), 0),
                    shown.torque(row.levels().label()),
                    shown.torque(row.levels().reference()),
                    CompareWords.signed(row.percent()),
                    CompareWords.signed(row.band().low()),
                    CompareWords.signed(row.band().high()));
        }
        return "\nBy speed, \"" + one.label() + "\" vs \"" + result.reference().label()
                + "\": whole-curve 95 % limits\n" + table.text();
    }

    /** What a day says of its candidates side by side: each at its own best, and what the decision runs tell. */
    String candidates(CandidateDay day, SessionResult result) {
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
        day.comparison().flatMap(MeasuredComparison::torque).ifPresent(told -> text.append(rows(told)));
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
