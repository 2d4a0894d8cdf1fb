package org.nextpull.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.HoldNow;
import org.nextpull.advice.Reason;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.report.ActText;
import org.nextpull.report.AdviceText;
import org.nextpull.report.CandidateWords;
import org.nextpull.report.FindingText;
import org.nextpull.report.HoldText;
import org.nextpull.report.LiveText;
import org.nextpull.report.PullColumn;
import org.nextpull.report.Shown;
import org.nextpull.report.text.AdviseText;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionResult;
import org.nextpull.simulator.Practice;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Quantity;

/** The conversation of a practice day: proposes, reads what is typed, runs the pull, until the user or the advice ends it. */
final class PracticeTalk implements LiveTyped.Reply {
    private final Console console;
    private final PrintWriter out;
    private final Practice practice;
    private final Shown shown;
    private final AdviceText words;
    private boolean goesOn = true;
    private boolean debriefed;
    /** Pulls at held speeds that were told. */
    private int told;

    /** Whether it was told what share of the held torque a pull made. */
    private boolean confirmed;

    PracticeTalk(Console console, Practice practice, Shown shown) {
        this.console = console;
        this.out = console.out();
        this.practice = practice;
        this.shown = shown;
        this.words = new AdviceText(shown);
    }

    /** Talks until the end of the day. */
    void hold() throws IOException {
        out.println("The engine is warm. Type help to see what can be typed.");
        propose();
        while (goesOn) {
            out.print("> ");
            out.flush();
            String line = console.in().readLine();
            if (line == null) {
                out.println();
                out.println("End of input: the day ends here.");
                end();
            } else {
                answer(line);
            }
        }
        debrief();
    }

    /** Ends the day from another thread. */
    void interrupted() {
        out.println();
        out.println("Interrupted: the day ends here.");
        debrief();
        out.flush();
    }

    private synchronized void debrief() {
        if (!debriefed) {
            debriefed = true;
            out.println();
            out.print(new DebriefText(shown).text(practice.debrief(), practice.debriefs(), practice.result()));
        }
    }

    private synchronized void answer(String line) {
        new LiveTyped(
                        new LiveTyped.Day(
                                practice.plan(),
                                practice.pulls() + 1,
                                false,
                                practice.result().unwatchedNow()),
                        this)
                .read(line);
    }

    @Override
    public void end() {
        goesOn = false;
    }

    @Override
    public void asProposed() {
        if (practice.hold().isPresent()) {
            hold(Optional.empty());
        } else if (isOver()) {
            end();
        } else {
            pull(practice.advice().setting().orElseThrow());
        }
    }

    @Override
    public void why() {
        out.println(practice.hold().isPresent() ? HoldText.HOW : words.because(practice.advice()));
    }

    @Override
    public void show() {
        out.print(new AdviseText(shown).advise(practice.result()));
    }

    @Override
    public void help() {
        out.print(LiveTyped.help(
                "run what is proposed; after a stop: end the day",
                "run another setting: advance and lambda; one number where the plan has one sweep"));
    }

    @Override
    public void wrong(String message) {
        out.println(message);
    }

    private boolean isOver() {
        return practice.advice().action() == Action.STOP;
    }

    private void propose() {
        if (practice.hold().isPresent()) {
            out.println(HoldText.sentence(practice.hold().get()));
            return;
        }
        Advice advice = practice.advice();
        out.println(words.headline(advice));
        if (isOver() || advice.reason() instanceof Reason.ChangeOver) {
            out.println(words.because(advice));
        } else if (advice.reason() instanceof Reason.Searching search
                && search.rise().isPresent()) {
            out.println(words.brief(advice));
        }
        practice.result()
                .candidates()
                .flatMap(day -> new CandidateWords(day, practice.plan().goal().response(), shown).answer())
                .ifPresent(out::println);
    }

    /** What was left out is as proposed, else as last run. */
    @Override
    public void set(EngineSetting typed) {
        if (practice.hold().isPresent()) {
            hold(typed.advance());
            return;
        }
        List<EngineSetting> before = practice.settings();
        EngineSetting like =
                practice.advice().setting().orElseGet(() -> before.isEmpty() ? typed : before.get(before.size() - 1));
        pull(typed.orElse(like));
    }

    /** Holds the speed of the moment; a sign to close the throttle is followed. */
    private void hold(Optional<Advance> advance) {
        Outcome<HoldNow> held = practice.hold(advance);
        say(held.findings());
        held.value().filter(said -> said.step().isClose()).ifPresent(said -> {
            out.println(HoldText.sentence(said));
            LiveText live = new LiveText(shown);
            List<MeasuredPull> pulls = practice.result().pulls();
            pulls.subList(told, pulls.size()).stream()
                    .flatMap(pull -> live.pull(practice.result(), pull).stream())
                    .filter(line -> !line.startsWith(" "))
                    .forEach(line -> out.println("  " + line));
            told = pulls.size();
            if (practice.hold().isEmpty()) {
                out.println(HoldText.PROVE);
            }
        });
        propose();
    }

    private void pull(EngineSetting setting) {
        Outcome<SessionResult> outcome = practice.pull(setting);
        if (outcome.isFailed()) {
            say(outcome.findings());
            return;
        }
        List<MeasuredPull> pulls = practice.result().pulls();
        out.println("Pull " + practice.pulls() + " at " + AdviceText.setting(setting)
                + (pulls.isEmpty() ? "" : measured(pulls.get(pulls.size() - 1))));
        List<Finding> against = practice.result().found().stream()
                .filter(finding -> finding.code() == FindingCode.HELD_AGAINST_PULL)
                .toList();
        say(confirmed ? List.of() : against);
        confirmed |= !against.isEmpty();
        propose();
    }

    private String measured(MeasuredPull pull) {
        String torque = pull.figures()
                .flatMap(Figures::meanTorque)
                .map(value -> ": " + shown.value(Quantity.TORQUE, value.newtonMetres()))
                .orElse("");
        String knock = switch (pull.knock().mark()) {
            case HEARD -> ", knock";
            case NONE -> ", no knock";
            case NOT_MEASURED -> ", knock not measured";
        };
        String use = pull.isUsed() ? "" : ", " + PullColumn.status(pull);
        return torque + knock + use;
    }

    /** Does by hand what a running session takes; parts and fuel are those of the plan. */
    @Override
    public void act(OperatorAction act) {
        if (act instanceof OperatorAction.Next) {
            out.println("The model engine has the parts and the fuel of the plan.");
            return;
        }
        List<Finding> wrong = practice.take(act);
        say(wrong);
        if (wrong.isEmpty()) {
            out.println(ActText.taken(act));
            propose();
        }
    }

    private void say(List<Finding> findings) {
        FindingText text = FindingText.in(shown);
        findings.forEach(finding -> out.println(text.withPlace(finding)));
    }
}
