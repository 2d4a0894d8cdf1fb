package org.nextpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.PresentConditions;
import org.nextpull.advice.Reason;
import org.nextpull.advice.WaitFor;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.Goal;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.PullChange;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Temperature;

/** What a running session says, in a terminal and in the window alike: plain lines, the most urgent first. */
public final class LiveText {
    /** Answer to one who confirms what was not proposed. */
    public static final String NOTHING_PROPOSED = "No setting proposed. Type what you set, e.g. 26 0.87.";

    /** Answer to one who asks why where nothing is advised. */
    public static final String NOTHING_SWEPT = "The plan has no spark or mixture sweep, so nothing is advised.";

    private final Shown shown;
    private final AdviceText words;
    private final FindingText sentences;

    public LiveText(Shown shown) {
        this.shown = shown;
        this.words = new AdviceText(shown);
        this.sentences = FindingText.in(shown);
    }

    /** What came of a pull, a line each: its response, its changes, what is worth saying of it. */
    public List<String> pull(SessionResult result, MeasuredPull pull) {
        List<String> lines = new ArrayList<>();
        PullChange change = PullChange.of(result, pull);
        KnockText.sentence(pull, result.plan().band()).ifPresent(lines::add);
        lines.add((pull.isPull() ? "Pull " : "Stretch ") + pull.number() + ": " + outcome(result, pull, change)
                + heldAt(pull) + ", " + ran(pull.setting()) + ", "
                + knock(pull.knock().mark()) + ".");
        List<String> against = new ArrayList<>();
        change.best().ifPresent(best -> against.add(against(best) + " on best (pull " + best.pull() + ")"));
        change.baseline()
                .filter(first -> change.best().map(PullChange.Against::pull).orElse(0) != first.pull())
                .ifPresent(first -> against.add(against(first) + " on baseline (pull " + first.pull() + ")"));
        if (!against.isEmpty()) {
            lines.add("  " + String.join(", ", against) + "." + scatter(result));
        }
        pull.findings().stream()
                .filter(finding -> finding.severity() != Finding.Severity.NOTE)
                .map(finding -> "  " + word(finding) + sentences.sentence(finding))
                .forEach(lines::add);
        return lines;
    }

    private String outcome(SessionResult result, MeasuredPull pull, PullChange change) {
        if (change.response().isPresent()) {
            Quantity quantity =
                    result.plan().goal().response() == Goal.Response.TORQUE ? Quantity.TORQUE : Quantity.POWER;
            return shown.value(quantity, change.response().getAsDouble());
        }
        return "no response, " + PullColumn.status(pull);
    }

    private static String heldAt(MeasuredPull pull) {
        OptionalDouble rpm = PullChange.heldRpm(pull);
        return rpm.isPresent() ? " at " + Shown.fixed(rpm.getAsDouble(), 0) + " rpm" : "";
    }

    private static String against(PullChange.Against against) {
        double percent = against.percent();
        return (percent >= 0 ? "+" : "") + Shown.fixed(percent, 2) + " %";
    }

    private static String scatter(SessionResult result) {
        return result.repeatability()
                .scatter()
                .map(scatter -> " Repeatability " + Shown.fixed(scatter.percent(), 2) + " %.")
                .orElse("");
    }

    private static String ran(EngineSetting setting) {
        String values = AdviceText.values(setting);
        String label = setting.label().map(name -> " (" + name + ")").orElse("");
        return (values.isEmpty() ? "setting not known" : values) + label;
    }

    private static String knock(KnockMark mark) {
        return switch (mark) {
            case HEARD -> "knock heard";
            case NONE -> "no knock";
            case NOT_MEASURED -> "knock not measured";
        };
    }

    /** The next step and why, in a line each. */
    public List<String> next(Advice advice) {
        return List.of(words.headline(advice), "  " + words.brief(advice));
    }

    /** The same once the plan's time between pulls is over; a change-over is begun meanwhile. */
    public List<String> afterCoolDown(Advice advice, double leftS) {
        return advice.reason() instanceof Reason.ChangeOver
                ? next(advice)
                : List.of(
                        "WAIT " + Shown.fixed(Math.ceil(leftS), 0) + " s. Then " + words.headline(advice),
                        "  " + words.brief(advice));
    }

    /** The next step and why, with the numbers. */
    public List<String> why(Advice advice) {
        return List.of(words.headline(advice), "  " + words.because(advice));
    }

    /** Why, alone. */
    public String because(Advice advice) {
        return words.because(advice);
    }

    /** How far what is waited for still has to go; empty when nothing is waited for. */
    public Optional<String> waiting(Advice advice, PresentConditions now) {
        return advice.waitFor().filter(wait -> advice.action() == Action.WAIT).map(wait -> waiting(wait, now));
    }

    private String waiting(WaitFor wait, PresentConditions now) {
        double present = present(wait.condition(), now).orElse(wait.now()).kelvins();
        double want = wait.want().kelvins();
        String gap = shown.difference(Math.abs(want - present));
        return "Waiting for " + name(wait.condition()) + ": " + shown.value(Quantity.TEMPERATURE, present) + ", " + gap
                + (present < want ? " below " : " above ") + shown.value(Quantity.TEMPERATURE, want) + ".";
    }

    private static Optional<Temperature> present(WaitFor.Condition condition, PresentConditions now) {
        return switch (condition) {
            case COOLANT -> now.coolant();
            case OIL -> now.oil();
            case INLET_AIR -> now.inletAir();
            case EXHAUST -> now.exhaust();
        };
    }

    private static String name(WaitFor.Condition condition) {
        return switch (condition) {
            case COOLANT -> "coolant";
            case OIL -> "oil";
            case INLET_AIR -> "inlet air";
            case EXHAUST -> "exhaust";
        };
    }

    /**
     * What was found of the day and its pulls that was not said before; a code is said once.
     *
     * @param said the codes that were said, to which these are added
     */
    public List<String> found(SessionResult result, Set<FindingCode> said) {
        List<Finding> news = result.found().stream()
                .filter(finding -> !said.contains(finding.code()))
                .toList();
        news.forEach(finding -> said.add(finding.code()));
        return new FindingLines(sentences)
                .said(news).stream().map(FindingLines.Line::marked).toList();
    }

    /** A finding as a line: {@code warning: ...}. */
    public String finding(Finding finding) {
        return word(finding) + sentences.withPlace(finding);
    }

    /** What goes on to be wrong. */
    public String still(Finding finding) {
        return "Still: " + sentences.withPlace(finding);
    }

    private static String word(Finding finding) {
        return finding.severity() == Finding.Severity.NOTE
                ? ""
                : finding.severity().id() + ": ";
    }

    /** The values that an operator looks at while nothing else is said. */
    public String values(PresentConditions now) {
        List<String> parts = new ArrayList<>();
        add(parts, "coolant", now.coolant());
        add(parts, "oil", now.oil());
        add(parts, "inlet air", now.inletAir());
        add(parts, "exhaust", now.exhaust());
        return String.join(", ", parts);
    }

    private void add(List<String> parts, String name, Optional<Temperature> value) {
        value.ifPresent(
                temperature -> parts.add(name + " " + shown.value(Quantity.TEMPERATURE, temperature.kelvins())));
    }

    /** How a session ended, and where it lies. */
    public List<String> ended(SessionResult result, String folder) {
        List<String> lines = new ArrayList<>();
        int pulls = result.pulls().size();
        lines.add("The session ended after " + pulls + (pulls == 1 ? " pull." : " pulls."));
        result.verdict().flatMap(AdviceText::stays).ifPresent(stays -> lines.add("  " + stays));
        lines.add("  Raw data: " + folder + ". Continue: live --resume.");
        return lines;
    }

    /** That this time is over. */
    public String cooledDown() {
        return "Cool-down done.";
    }

    /** That somebody did not wait for it. */
    public String tooSoon(int pull, double leftS) {
        return "Pull " + pull + " started " + Shown.fixed(Math.ceil(leftS), 0) + " s early: may be heat-soaked.";
    }

    /** That a pull is in progress. */
    public String running(int pull) {
        return "Full load: pull " + pull + " is running.";
    }
}
