package org.nextpull.report.text;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.notebook.Checkup;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.report.ActText;
import org.nextpull.report.AdviceText;
import org.nextpull.report.MapText;
import org.nextpull.report.Shown;
import org.nextpull.session.SessionResult;

/** What the commands over the notebook print. Control characters in anybody's words are shown, not sent to the terminal. */
public final class NotebookText {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final Shown shown;
    private final ZoneId zone;

    /**
     * Words for people.
     *
     * @param zone where they read the clock
     */
    public NotebookText(Shown shown, ZoneId zone) {
        this.shown = shown;
        this.zone = zone;
    }

    /** Every session, a line each. */
    public String list(List<SessionSummary> sessions) {
        return sessions.isEmpty()
                ? "No session was kept yet. A live session keeps itself; notebook add keeps a day of logs.\n"
                : table(sessions);
    }

    /** The sessions that a search found. */
    public String found(List<SessionSummary> sessions) {
        return sessions.isEmpty() ? "No session holds all of these words.\n" : table(sessions);
    }

    private String table(List<SessionSummary> sessions) {
        TextTable table = new TextTable(
                "session", "started", "engine", "fuel", "labels", "pulls", "used", "ended", "last advice", "plan");
        for (SessionSummary session : sessions) {
            table.row(
                    String.valueOf(session.id()),
                    time(session.started()),
                    plain(session.engine().orElse("-")),
                    plain(session.fuel().orElse("-")),
                    plain(String.join(", ", session.labels())),
                    String.valueOf(session.pulls()),
                    String.valueOf(session.used()),
                    session.closed().map(this::time).orElse("not closed"),
                    session.lastAdvice().map(code -> code.replace('-', ' ')).orElse("-"),
                    plain(session.planName()));
        }
        return table.text();
    }

    /** One session: its answer, what was done by hand and what was advised at the time. */
    public String session(KeptSession session, SessionResult result) {
        SessionSummary summary = session.summary();
        StringBuilder text = new StringBuilder("Session " + session.id() + ", begun " + time(summary.started()));
        text.append(summary.closed().map(at -> ", ended " + time(at)).orElse(", not closed"))
                .append(".\nEngine ")
                .append(summary.engine().map(NotebookText::plain).orElse("without a name"))
                .append(", plan ")
                .append(plain(summary.planName()))
                .append(", kept by ")
                .append(plain(summary.version()))
                .append(".\n\n");
        text.append(plainLines(new AdviseText(shown).advise(result)));
        if (!session.acts().isEmpty()) {
            text.append("\nDone by hand:\n");
            session.acts().forEach(act -> text.append(act(act)));
        }
        if (!session.advice().isEmpty()) {
            text.append("\nAdvised when it was kept:\n");
            session.advice().forEach(advice -> text.append(advice(advice)));
        }
        return text.toString();
    }

    private String act(KeptSession.Act act) {
        return "  " + time(act.at()) + ", " + after(act.pulls()) + ": " + plain(ActText.of(act.act())) + "\n";
    }

    private String advice(KeptSession.Advice advice) {
        return "  " + time(advice.at()) + ", " + after(advice.pulls()) + ": " + sentence(advice) + "\n";
    }

    private static String after(int pulls) {
        return pulls == 0 ? "before the first pull" : "after pull " + pulls;
    }

    private String time(Instant at) {
        return TIME.withZone(zone).format(at);
    }

    /** What a check found, in a sentence; its findings are said one by one. */
    public static String check(Checkup checkup) {
        String looked = checkup.sessions() + (checkup.sessions() == 1 ? " session" : " sessions") + " with "
                + checkup.pulls() + (checkup.pulls() == 1 ? " pull" : " pulls");
        return checkup.isGood()
                ? "The notebook is whole: " + looked + ", every figure made again from its samples as it was kept."
                : "The notebook is not as it was kept (" + checkup.findings().size()
                        + (checkup.findings().size() == 1 ? " finding" : " findings") + "); " + looked
                        + " could be made again.";
    }

    /** One line of anybody's words. */
    private static String plain(String words) {
        return words.codePoints()
                .map(letter -> Character.isISOControl(letter) ? ' ' : letter)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static String plainLines(String text) {
        return text.codePoints()
                .map(letter -> letter != '\n' && Character.isISOControl(letter) ? ' ' : letter)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** What was asked for, and why: {@code pull 28.0 deg (climb timing)}; at a stop what was left in the engine. */
    public static String sentence(KeptSession.Advice advice) {
        boolean isStop = advice.action().equals("stop");
        EngineSetting setting = isStop ? advice.leave() : advice.setting();
        String values = isStop
                ? Optional.of(AdviceText.values(setting))
                        .filter(left -> !left.isEmpty())
                        .map(left -> ", final setting " + left)
                        .orElse("")
                : " " + AdviceText.setting(setting);
        String cells = setting.map().map(map -> ": " + MapText.cells(map)).orElse("");
        return advice.action() + values + " (" + advice.code().replace('-', ' ') + ")" + cells;
    }
}
