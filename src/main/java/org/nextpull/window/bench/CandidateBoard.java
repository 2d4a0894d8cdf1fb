package org.nextpull.window.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.advice.Action;
import org.nextpull.advice.Reason;
import org.nextpull.chart.OverlayPlot;
import org.nextpull.plan.Goal;
import org.nextpull.report.CandidateWords;
import org.nextpull.report.NextStep;
import org.nextpull.report.NextStepText;
import org.nextpull.report.Shown;
import org.nextpull.session.CandidateDay;
import org.nextpull.session.SessionResult;
import org.nextpull.window.day.DaySource;

/**
 * Everything that the page of the candidates shows, in words and data; the view adds nothing.
 *
 * @param lead the next step
 * @param changeOver what is fitted next; empty where the next step is no change-over
 * @param steps the checklist of the change-over
 * @param lines a line for each figure: its name, then that of each candidate; the first line names them
 * @param sentences the answer, and what of it is the fuel
 * @param curves mean curves of the decision runs
 */
record CandidateBoard(
        NextStep lead,
        Optional<Reason.ChangeOver> changeOver,
        List<String> steps,
        List<List<String>> lines,
        List<String> sentences,
        Optional<OverlayPlot> curves) {
    private static final String LAMBDA = ", lambda ";

    CandidateBoard {
        steps = List.copyOf(steps);
        lines = lines.stream().map(List::copyOf).toList();
        sentences = List.copyOf(sentences);
    }

    /** The board of a day; without lines where it decides between no candidates. */
    static CandidateBoard of(DaySource.Moment moment, Shown shown) {
        SessionResult result = moment.result();
        Goal.Response response = result.plan().goal().response();
        Optional<CandidateDay> day = result.candidates();
        Optional<Reason.ChangeOver> changeOver = result.advice()
                .filter(advice -> advice.action() != Action.STOP)
                .map(advice -> advice.reason())
                .filter(Reason.ChangeOver.class::isInstance)
                .map(Reason.ChangeOver.class::cast);
        NextStep step = new NextStepText(shown).of(result, moment.coolDownS());
        return new CandidateBoard(
                changeOver.isPresent() ? besideSteps(step) : step,
                changeOver,
                changeOver.map(CandidateWords::steps).orElse(List.of()),
                day.map(known -> lines(known, new CandidateWords(known, response, shown)))
                        .orElse(List.of()),
                day.map(known -> sentences(known, new CandidateWords(known, response, shown)))
                        .orElse(List.of("This day decides between no candidates: its plan has no [[candidate]].")),
                day.flatMap(CandidateDay::comparison).flatMap(told -> OverlayPlot.of(told, shown.units())));
    }

    /** The steps themselves stand in the checklist below it. */
    private static NextStep besideSteps(NextStep step) {
        String rest = step.whole().substring(step.whole().indexOf(". ") + 2);
        return new NextStep(
                step.kind(), step.word(), step.figures(), step.about(), step.because(), step.listen(), rest);
    }

    /** A setting of two numbers takes two lines, which a column of a third of the place has room for. */
    private static List<List<String>> lines(CandidateDay day, CandidateWords words) {
        List<List<String>> rows = day.candidates().stream().map(words::row).toList();
        List<List<String>> lines = new ArrayList<>();
        for (int figure = 0; figure < CandidateWords.heads().size(); figure++) {
            int at = figure;
            List<String> cells = rows.stream().map(row -> row.get(at)).toList();
            String head = CandidateWords.heads().get(figure);
            boolean isTwo = cells.stream().anyMatch(cell -> cell.contains(LAMBDA));
            lines.add(line(
                    head, cells.stream().map(cell -> cell.split(LAMBDA, 2)[0]).toList()));
            if (isTwo) {
                lines.add(line(
                        "lambda",
                        cells.stream()
                                .map(cell -> cell.contains(LAMBDA) ? cell.split(LAMBDA, 2)[1] : "-")
                                .toList()));
            }
        }
        return lines;
    }

    private static List<String> line(String head, List<String> cells) {
        return Stream.concat(Stream.of(head), cells.stream()).toList();
    }

    private static List<String> sentences(CandidateDay day, CandidateWords words) {
        List<String> said = new ArrayList<>(words.answer().stream().toList());
        said.add(day.isDeciding() ? words.runs() : words.swept());
        words.groups().ifPresent(said::add);
        said.addAll(words.knockLimits());
        said.addAll(words.shares());
        said.addAll(words.consumptions());
        return said;
    }
}
