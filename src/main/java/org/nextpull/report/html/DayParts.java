package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.report.AdviceText;
import org.nextpull.report.AnswerText;
import org.nextpull.report.CandidateWords;
import org.nextpull.report.FindingLines;
import org.nextpull.report.FindingText;
import org.nextpull.report.HoldText;
import org.nextpull.report.MapText;
import org.nextpull.report.PullColumn;
import org.nextpull.report.Shown;
import org.nextpull.report.StopText;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.Replay;
import org.nextpull.session.SessionResult;

/** The parts of a sheet that say how a day went: the answer in full, speeds, pulls, path, what was done by hand, and findings. */
final class DayParts {
    private static final List<PullColumn> FIGURES = List.of(
            PullColumn.NUMBER,
            PullColumn.ADVANCE,
            PullColumn.LAMBDA,
            PullColumn.MEAN_TORQUE,
            PullColumn.MEAN_POWER,
            PullColumn.PEAK_TORQUE,
            PullColumn.PEAK_TORQUE_SPEED,
            PullColumn.PEAK_POWER,
            PullColumn.PEAK_POWER_SPEED,
            PullColumn.KNOCK,
            PullColumn.STANDING,
            PullColumn.LABEL,
            PullColumn.FUEL,
            PullColumn.NOTE);
    private static final List<PullColumn> CONDITIONS = List.of(
            PullColumn.NUMBER,
            PullColumn.CORRECTION,
            PullColumn.BAROMETER,
            PullColumn.AIR,
            PullColumn.HUMIDITY,
            PullColumn.COOLANT,
            PullColumn.OIL,
            PullColumn.EXHAUST,
            PullColumn.SOURCE,
            PullColumn.LINE);

    /** Nobody reads a page of more; a browser hardly opens one of ten thousand. */
    static final int MOST_ROWS = 300;

    private final Replay replay;
    private final SessionResult result;
    private final Shown shown;
    private final AdviceText words;
    private final AnswerText answers;

    DayParts(Replay replay, Shown shown) {
        this.replay = replay;
        this.result = replay.whole();
        this.shown = shown;
        this.words = new AdviceText(shown);
        this.answers = new AnswerText(shown);
    }

    /** Why the day ended or goes on, what was fitted, and how sure that is. */
    Section answer() {
        List<String> sentences = new ArrayList<>();
        result.verdict().ifPresent(verdict -> say(verdict, sentences));
        sentences.add(answers.repeatability(result));
        return Section.of("The answer in full").withParagraphs(sentences);
    }

    private void say(Verdict verdict, List<String> sentences) {
        Advice advice = verdict.advice();
        sentences.add(
                advice.action() == Action.STOP
                        ? "The day has ended. " + words.because(advice)
                        : "The day has not ended. " + words.headline(advice) + ". " + words.because(advice));
        advice.setting()
                .flatMap(EngineSetting::map)
                .ifPresent(map -> sentences.add("The next map: " + MapText.cells(map) + "."));
        result.candidates()
                .ifPresentOrElse(
                        day -> sentences.addAll(
                                new CandidateWords(day, result.plan().goal().response(), shown).sweeps(result)),
                        () -> fitted(verdict, sentences));
    }

    private void fitted(Verdict verdict, List<String> sentences) {
        verdict.map().map(MapText::standing).ifPresent(sentences::add);
        verdict.timing().map(answer -> answers.timing(result, answer)).ifPresent(sentences::add);
        verdict.timing().flatMap(answer -> answers.knockLimit(result, answer)).ifPresent(sentences::add);
        verdict.timing().flatMap(SweepAnswer::mapGain).map(MapText::wouldGain).ifPresent(sentences::add);
        verdict.mixture().ifPresent(answer -> {
            sentences.add(answers.mixture(answer));
            String edges = answers.edges(result, answer);
            if (!edges.isEmpty()) {
                sentences.add("Mixture sweep: " + edges + ".");
            }
        });
        sentences.addAll(answers.moved(verdict));
    }

    /** MBT by speed. */
    Section rows() {
        return result.verdict()
                .flatMap(Verdict::timing)
                .filter(answer -> !answer.rows().isEmpty() || !answer.openRows().isEmpty())
                .map(this::rows)
                .orElse(Section.of("MBT by speed"));
    }

    private Section rows(SweepAnswer answer) {
        Section.Grid grid = Section.Grid.of("MBT of each row with its own 90 % interval", "rpm", "deg", "from", "to");
        for (SweepAnswer.RowOptimum row : answer.rows()) {
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
                            : "Not yet confirmed: no pull was run with this table.");
        }
        paragraphs.addAll(AnswerText.openRows(answer));
        return Section.of("MBT by speed" + CandidatePart.swept(result))
                .withParagraphs(paragraphs)
                .withGrids(answer.rows().isEmpty() ? List.of() : List.of(grid));
    }

    /** The pulls: what was set and what came out. */
    Section pulls() {
        return pulls("Pulls", "Settings, corrected averages over the band, and peaks", FIGURES);
    }

    /** The conditions of each pull. */
    Section conditions() {
        return pulls(
                "Conditions and correction",
                "Medians over the band of each pull; the exhaust is the highest value. Logs: "
                        + result.pulls().stream()
                                .map(pull -> pull.origin().source())
                                .distinct()
                                .collect(Collectors.joining(", ")),
                CONDITIONS);
    }

    private Section pulls(String title, String caption, List<PullColumn> all) {
        List<MeasuredPull> pulls = result.pulls();
        List<PullColumn> columns = PullColumn.telling(all, pulls, shown);
        int first = Math.max(0, pulls.size() - MOST_ROWS);
        String newest = "; the newest " + MOST_ROWS + " of " + pulls.size() + " pulls, in the CSV file are all";
        Section.Grid grid = Section.Grid.of(
                caption + (first > 0 ? newest : ""),
                columns.stream().map(column -> column.heading(shown)).toArray(String[]::new));
        for (MeasuredPull pull : pulls.subList(first, pulls.size())) {
            grid = grid.row(
                    columns.stream().map(column -> column.cell(pull, shown)).toArray(String[]::new));
        }
        return Section.of(title).withGrids(grid.isEmpty() ? List.of() : List.of(grid));
    }

    /** How the answer was found: what each pull led to, and what the held speeds of a plan were. */
    Section path() {
        List<String> steps = new ArrayList<>();
        List<Replay.Step> all = replay.steps();
        int from = 0;
        for (int to = 1; to <= all.size(); to++) {
            if (to == all.size() || !told(all.get(to)).equals(told(all.get(from)))) {
                int first = all.get(from).pull().number();
                int last = all.get(to - 1).pull().number();
                boolean isMoreHeld = to < all.size() && held(all.get(to)).isPresent();
                steps.add((first == last ? "Pull " + first : "Pulls " + first + " to " + last) + ": "
                        + stretch(all.subList(from, to), isMoreHeld));
                from = to;
            }
        }
        return Section.of("How it was found, pull by pull")
                .withParagraphs(
                        steps.isEmpty()
                                ? List.of()
                                : List.of("What each pull led to; the reasons are in the JSON file beside the sheet."
                                        + (replay.pullsSaved() > 0 ? " " + StopText.of(replay) : "")))
                .withItems(steps.subList(Math.max(0, steps.size() - MOST_ROWS), steps.size()));
    }

    /** What consecutive pulls have in common: the speed that the plan held, else what they led to. */
    private String told(Replay.Step step) {
        return held(step).orElseGet(() -> words.headline(step.verdict().advice()));
    }

    private Optional<String> held(Replay.Step step) {
        return HoldText.held(step.pull(), result.plan());
    }

    /** Of a held speed the advances in their order, and what it led to unless the plan had another speed to hold. */
    private String stretch(List<Replay.Step> steps, boolean isMoreHeld) {
        Replay.Step last = steps.get(steps.size() - 1);
        if (held(last).isEmpty()) {
            return told(last);
        }
        String advances = steps.stream()
                .map(step -> PullColumn.ADVANCE.cell(step.pull(), shown))
                .collect(Collectors.joining(", "));
        return told(last) + ", " + advances + " deg"
                + (isMoreHeld ? "" : ". " + words.headline(last.verdict().advice()));
    }

    /** What the operator changed by hand. */
    Section changes() {
        List<String> changes = new ArrayList<>();
        Map<Integer, String> struck = new TreeMap<>(result.amendments().struck());
        struck.forEach((pull, reason) -> changes.add(
                "Pull " + pull + " was excluded: " + (reason.isBlank() ? "no reason was given" : reason) + "."));
        new TreeSet<>(result.amendments().lifted())
                .forEach(pull -> changes.add("Knock and limits of pull " + pull
                        + " were overridden by the operator: they no longer block any setting."));
        new TreeSet<>(result.amendments().corrected().keySet())
                .forEach(pull -> changes.add("The setting of pull " + pull + " was corrected by the operator."));
        return Section.of("Operator changes").withItems(changes);
    }

    /** What is wrong or worth saying. */
    Section findings() {
        return Section.of("Findings").withItems(new FindingLines(FindingText.in(shown)).lines(result.found()));
    }
}
