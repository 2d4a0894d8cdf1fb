package org.nextpull.report.text;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.finding.FindingCode;
import org.nextpull.report.AdviceText;
import org.nextpull.report.AnswerText;
import org.nextpull.report.FindingLines;
import org.nextpull.report.FindingText;
import org.nextpull.report.HoldText;
import org.nextpull.report.KnockText;
import org.nextpull.report.MapText;
import org.nextpull.report.NextStepText;
import org.nextpull.report.PullColumn;
import org.nextpull.report.Shown;
import org.nextpull.report.StopText;
import org.nextpull.report.WatchText;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.PullChange;
import org.nextpull.session.Replay;
import org.nextpull.session.SessionResult;

/** What {@code advise} and {@code replay} print: the next step first, then what it rests on. */
public final class AdviseText {
    private static final List<PullColumn> PULLS = List.of(
            PullColumn.NUMBER,
            PullColumn.ADVANCE,
            PullColumn.LAMBDA,
            PullColumn.MEAN_TORQUE,
            PullColumn.MEAN_POWER,
            PullColumn.KNOCK,
            PullColumn.STANDING,
            PullColumn.LABEL,
            PullColumn.SOURCE);
    private static final List<PullColumn> STEPS = List.of(
            PullColumn.NUMBER,
            PullColumn.LABEL,
            PullColumn.ADVANCE,
            PullColumn.LAMBDA,
            PullColumn.KNOCK,
            PullColumn.MEAN_TORQUE,
            PullColumn.STANDING);

    private static final String NO_PULL =
            "No pull could be used: see why each was rejected, or check that the log holds full-load pulls over the"
                    + " band, of the kind that [pull] kind names.\n";

    private static final String NOTHING_PROPOSED = "No setting is proposed. ";

    private final Shown shown;
    private final AdviceText words;
    private final AnswerText answers;
    private final FindingText sentences;

    public AdviseText(Shown shown) {
        this.shown = shown;
        this.words = new AdviceText(shown);
        this.answers = new AnswerText(shown);
        this.sentences = FindingText.in(shown);
    }

    /** The answer of a day. */
    public String advise(SessionResult result) {
        return answer(result, true);
    }

    private String answer(SessionResult result, boolean withPulls) {
        StringBuilder text = new StringBuilder();
        if (result.isWithoutAnswer()) {
            text.append(withoutAnswer(result)).append(findings(result)).append('\n');
        }
        WatchText.of(result).ifPresent(gaps -> text.append(gaps).append("\n\n"));
        if (result.verdict().isEmpty() && !result.isWithoutAnswer()) {
            text.append(new NextStepText(shown).of(result).because()).append("\n\n");
        }
        result.verdict()
                .ifPresent(verdict -> text.append(heard(result, verdict.advice()))
                        .append(next(verdict))
                        .append('\n'));
        result.candidates().ifPresent(day -> text.append(new CompareText(shown).candidates(day, result)));
        if (result.candidates().isEmpty()) {
            result.verdict().ifPresent(verdict -> text.append(answers(result, verdict)));
        }
        text.append(answers.repeatability(result)).append(withPulls ? "\n\n" + pulls(result.pulls()) : "\n");
        if (!result.isWithoutAnswer()) {
            text.append(findings(result));
        }
        return text.toString();
    }

    /** Pulls that are good in themselves may still be no day to advise on: then the error that says why comes first. */
    private String withoutAnswer(SessionResult result) {
        return result.found().stream()
                .filter(finding -> finding.isError() && finding.code() != FindingCode.NO_PULL_TO_USE)
                .filter(finding -> result.pulls().stream().anyMatch(MeasuredPull::isUsed))
                .findFirst()
                .map(finding -> NOTHING_PROPOSED + sentences.sentence(finding) + "\n")
                .orElse(NO_PULL);
    }

    /** At a stop knock comes first. */
    private static String heard(SessionResult result, Advice advice) {
        return advice.action() == Action.STOP
                ? KnockText.leading(result).stream().map(line -> line + "\n").collect(Collectors.joining())
                : "";
    }

    private String next(Verdict verdict) {
        Advice advice = verdict.advice();
        return words.headline(advice) + "\n  " + words.because(advice) + "\n" + MapTables.toSet(verdict);
    }

    private String answers(SessionResult result, Verdict verdict) {
        String timing = verdict.timing().map(answer -> timing(result, answer)).orElse("");
        String mixture =
                verdict.mixture().map(answer -> mixture(result, answer)).orElse("");
        String moved = answers.moved(verdict).stream()
                .map(sentence -> "  " + sentence + "\n")
                .collect(Collectors.joining());
        String map = verdict.map().map(MapTables::answer).orElse("");
        return timing.isEmpty() && mixture.isEmpty() && map.isEmpty() ? "" : timing + mixture + moved + map + "\n";
    }

    private String timing(SessionResult result, SweepAnswer answer) {
        String limit = answers.knockLimit(result, answer)
                .map(sentence -> "  " + sentence + "\n")
                .orElse("");
        String gain = answer.mapGain()
                .map(found -> "  " + MapText.wouldGain(found) + "\n")
                .orElse("");
        return answers.timing(result, answer) + "\n" + limit + gain + rows(answer);
    }

    private static String rows(SweepAnswer answer) {
        String open = AnswerText.openRows(answer).stream()
                .map(sentence -> "  " + sentence + "\n")
                .collect(Collectors.joining());
        return table(answer) + open;
    }

    private static String table(SweepAnswer answer) {
        if (answer.rows().isEmpty()) {
            return "";
        }
        TextTable table = new TextTable("  rpm", "MBT deg", "from", "to");
        for (SweepAnswer.RowOptimum row : answer.rows()) {
            table.row(
                    "  " + Shown.fixed(row.rpm(), 0),
                    Shown.fixed(row.bestDeg(), 1),
                    Shown.fixed(row.intervalDeg().low(), 1),
                    Shown.fixed(row.intervalDeg().high(), 1));
        }
        String run = answer.rowsProven() ? "run in a pull" : "not yet run as a map";
        return "  MBT by speed, each 90 % CI on its own (" + run + "):\n" + table.text();
    }

    private String mixture(SessionResult result, SweepAnswer answer) {
        String edges = answers.edges(result, answer);
        return answers.mixture(answer) + "\n" + (edges.isEmpty() ? "" : "  " + edges + "\n");
    }

    private String pulls(List<MeasuredPull> pulls) {
        List<PullColumn> columns = PullColumn.telling(PULLS, pulls, shown);
        TextTable table = new TextTable(
                columns.stream().map(column -> column.heading(shown)).toArray(String[]::new));
        for (MeasuredPull pull : pulls) {
            table.row(columns.stream().map(column -> column.cell(pull, shown)).toArray(String[]::new));
        }
        return table.isEmpty() ? "" : table.text();
    }

    private String findings(SessionResult result) {
        boolean isWithoutAnswer = result.isWithoutAnswer();
        String text = new FindingLines(sentences)
                .text(result.found().stream()
                        .filter(finding -> !isWithoutAnswer || finding.code() != FindingCode.NO_PULL_TO_USE)
                        .toList());
        return text.isEmpty() ? "" : "\n" + text;
    }

    /** The day as it would have been advised pull by pull, a line each; the reasons and all tables where they are asked for. */
    public String replay(Replay replay, boolean verbose) {
        StringBuilder text = new StringBuilder();
        replay.steps().forEach(step -> text.append(verbose ? step(step, replay) : ""));
        text.append(verbose ? "" : steps(replay));
        text.append(replay.days().isEmpty() ? stopped(replay) : days(replay.days()) + "\n");
        return text.append(answer(replay.whole(), verbose || replay.steps().isEmpty()))
                .toString();
    }

    private static String stopped(Replay replay) {
        return replay.steps().isEmpty() ? "" : StopText.of(replay) + "\n\n";
    }

    private String step(Replay.Step step, Replay replay) {
        MeasuredPull pull = step.pull();
        String torque = PullColumn.MEAN_TORQUE
                .said(pull, shown)
                .map(value -> ", " + value)
                .orElse("");
        return "After pull " + pull.number() + " (" + AdviceText.setting(pull.setting()) + torque
                + (pull.isUsed() ? "" : ", " + PullColumn.status(pull)) + "): "
                + KnockText.sentence(pull, replay.whole().plan().band())
                        .map(knock -> knock + " ")
                        .orElse("")
                + alarms(step) + next(step.verdict()) + "\n";
    }

    /** What each pull read, and what was said after it unless that had been said before; of the plan's held speeds which it was. */
    private String steps(Replay replay) {
        List<PullColumn> columns = PullColumn.telling(STEPS, replay.whole().pulls(), shown);
        TextTable table = new TextTable(
                Stream.concat(columns.stream().map(column -> column.heading(shown)), Stream.of("on first", "then"))
                        .toArray(String[]::new));
        String before = "";
        List<Replay.Step> all = replay.steps();
        for (int at = 0; at < all.size(); at++) {
            Replay.Step step = all.get(at);
            boolean isMoreHeld = at + 1 < all.size()
                    && HoldText.held(all.get(at + 1).pull(), replay.whole().plan())
                            .isPresent();
            String next = words.headline(step.verdict().advice());
            String said = HoldText.held(step.pull(), replay.whole().plan())
                    .map(held -> isMoreHeld ? held : held + ". " + next)
                    .orElse(next);
            String change = PullChange.of(replay.whole(), step.pull())
                    .baseline()
                    .map(first -> String.format(Locale.ROOT, "%+.1f %%", first.percent()))
                    .orElse("-");
            table.row(Stream.concat(
                            columns.stream().map(column -> column.cell(step.pull(), shown)),
                            Stream.of(change, alarms(step) + (said.equals(before) ? "as above" : said)))
                    .toArray(String[]::new));
            before = said;
        }
        return table.isEmpty() ? "" : table.text() + "\n";
    }

    private String alarms(Replay.Step step) {
        return step.alarms().stream()
                .map(alarm -> "ALARM line " + alarm.since().line() + ", " + words.passed(alarm) + ". ")
                .collect(Collectors.joining());
    }

    /** What each of several days says alone, and what it adds to those before it. */
    private static String days(List<Replay.OneDay> days) {
        TextTable table = new TextTable("day", "pulls", "stop after", "alone", "with the days before", "from");
        int number = 0;
        for (Replay.OneDay day : days) {
            number++;
            MeasuredPull first = day.steps().get(0).pull();
            table.row(
                    String.valueOf(number),
                    String.valueOf(day.steps().size()),
                    day.stoppedAfter().isPresent()
                            ? String.valueOf(day.stoppedAfter().getAsInt())
                            : "-",
                    answer(day.alone()),
                    answer(day.together()),
                    first.origin().source());
        }
        return "Day by day: the final setting, and the torque still to find.\n" + table.text();
    }

    private static String answer(Verdict verdict) {
        String leave =
                verdict.chosen().map(Chosen::setting).map(AdviceText::setting).orElse("nothing yet");
        return leave
                + verdict.map()
                        .map(state -> ", " + Shown.fixed(state.leftAtPeak().expectedPercent(), 2) + " %")
                        .orElse("");
    }
}
