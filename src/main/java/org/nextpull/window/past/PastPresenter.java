package org.nextpull.window.past;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Verdict;
import org.nextpull.chart.SweepPlot;
import org.nextpull.chart.SweepPlots;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.report.ActText;
import org.nextpull.report.AdviceText;
import org.nextpull.report.AnswerText;
import org.nextpull.report.Shown;
import org.nextpull.report.text.NotebookText;
import org.nextpull.session.SessionResult;

/** Turns sessions of the notebook into rows and pages. Knows no file and no view. */
final class PastPresenter {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final Shown shown;
    private final ZoneId zone;
    private final AdviceText words;
    private final AnswerText answers;

    /**
     * Words for people.
     *
     * @param zone where they read the clock
     */
    PastPresenter(Shown shown, ZoneId zone) {
        this.shown = shown;
        this.zone = zone;
        this.words = new AdviceText(shown);
        this.answers = new AnswerText(shown);
    }

    List<Row> rows(List<SessionSummary> sessions) {
        return sessions.stream().map(this::row).toList();
    }

    private Row row(SessionSummary session) {
        List<String> what = new ArrayList<>();
        session.fuel().ifPresent(what::add);
        what.addAll(session.labels());
        return new Row(
                session.id(),
                time(session.started()),
                session.engine().orElse("without a name"),
                String.join(", ", what),
                session.used() + "/" + session.pulls(),
                session.closed().isPresent() ? "closed" : "not closed",
                session.lastAdvice().map(code -> code.replace('-', ' ')).orElse("no advice"));
    }

    /**
     * One session.
     *
     * @param result its result, made again from its samples
     */
    Details session(KeptSession session, SessionResult result) {
        SessionSummary summary = session.summary();
        String heading = "Session " + session.id() + ": " + summary.engine().orElse("engine without a name") + ", "
                + time(summary.started())
                + summary.closed().map(at -> " to " + time(at)).orElse(", not closed") + ", plan "
                + summary.planName();
        List<SweepPlot> plots = SweepPlots.of(result, shown.units());
        return new Details(
                session.id(),
                heading,
                answer(result),
                session.acts().stream().map(this::act).toList(),
                session.advice().stream().map(this::advice).toList(),
                plots.isEmpty() ? Optional.empty() : Optional.of(plots.get(plots.size() - 1)));
    }

    private List<String> answer(SessionResult result) {
        List<String> answer = new ArrayList<>();
        Optional<Verdict> verdict = result.verdict();
        Optional<Advice> advice = verdict.map(Verdict::advice);
        advice.ifPresent(next -> answer.add(words.headline(next)));
        advice.ifPresent(next -> answer.add(words.because(next)));
        verdict.flatMap(Verdict::timing).ifPresent(sweep -> answer.add(answers.timing(result, sweep)));
        verdict.flatMap(Verdict::mixture).ifPresent(sweep -> answer.add(answers.mixture(sweep)));
        answer.add(answers.repeatability(result));
        return answer;
    }

    private String act(KeptSession.Act act) {
        return time(act.at()) + ", " + after(act.pulls()) + ": " + ActText.of(act.act());
    }

    private String advice(KeptSession.Advice advice) {
        return time(advice.at()) + ", " + after(advice.pulls()) + ": " + NotebookText.sentence(advice);
    }

    private static String after(int pulls) {
        return pulls == 0 ? "before the first pull" : "after pull " + pulls;
    }

    private String time(Instant at) {
        return TIME.withZone(zone).format(at);
    }

    /**
     * A session in the list, in words.
     *
     * @param id its number
     * @param started when it began
     * @param engine its engine
     * @param what fuel and labels
     * @param pulls how many pulls count, and of how many
     * @param state whether it was closed
     * @param advice what was advised last
     */
    record Row(long id, String started, String engine, String what, String pulls, String state, String advice) {

        /** The row for whoever hears it. */
        String spoken() {
            return "Session " + id + ", " + started + ", " + engine + ", " + what + ", " + "pulls used: "
                    + pulls.replace("/", " of ") + ", " + state + ", " + advice;
        }
    }

    /**
     * One session, in words and data.
     *
     * @param id its number
     * @param heading what it was
     * @param answer what the day says, the most important first
     * @param hand what was done by hand, a line each
     * @param advised what was advised at the time, a line each
     * @param sweep the response against the factor that was swept last
     */
    record Details(
            long id,
            String heading,
            List<String> answer,
            List<String> hand,
            List<String> advised,
            Optional<SweepPlot> sweep) {
        Details {
            answer = List.copyOf(answer);
            hand = List.copyOf(hand);
            advised = List.copyOf(advised);
        }

        /** All sentences, a line each. */
        String text() {
            StringBuilder text = new StringBuilder();
            part(text, "", answer);
            part(text, "Done by hand", hand);
            part(text, "Advised at the time", advised);
            return text.toString().stripTrailing();
        }

        private static void part(StringBuilder text, String title, List<String> lines) {
            if (!lines.isEmpty()) {
                text.append(title.isEmpty() ? "" : title + "\n");
                lines.forEach(line -> text.append(line).append('\n'));
                text.append('\n');
            }
        }
    }
}
