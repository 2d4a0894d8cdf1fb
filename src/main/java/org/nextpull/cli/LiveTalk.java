package org.nextpull.cli;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.HoldNow;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.live.LiveSession;
import org.nextpull.live.LiveState;
import org.nextpull.report.ActText;
import org.nextpull.report.AlarmText;
import org.nextpull.report.HoldText;
import org.nextpull.report.LiveText;
import org.nextpull.report.SettingDoubt;
import org.nextpull.report.Shown;
import org.nextpull.report.WatchText;
import org.nextpull.report.text.AdviseText;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.Advance;

/** A running session in a terminal: plain lines, each with the time of day, and what is typed between them. */
final class LiveTalk implements LiveSession.Listener {
    private static final String BELL = "\u0007";
    private static final double WAITING_EVERY_S = 10;
    private static final double FAILING_EVERY_S = 60;

    private final AsyncPrinter out;
    private final Shown shown;
    private final LiveText words;
    private final AlarmText alarms;
    private Optional<Advice> said = Optional.empty();
    /** The pull that what was said is for. */
    private int saidOfPull;

    private final Set<FindingCode> found = EnumSet.noneOf(FindingCode.class);
    private Optional<HoldNow> holdSaid = Optional.empty();
    private Optional<String> gapsSaid = Optional.empty();
    private boolean running;
    private boolean cooling;
    private volatile boolean ending;
    private boolean begun;
    private boolean ended;
    private int acts;
    private double waitingSaidS = Double.NEGATIVE_INFINITY;
    private double failingSaidS;

    LiveTalk(AsyncPrinter out, Shown shown) {
        this.out = out;
        this.shown = shown;
        this.words = new LiveText(shown);
        this.alarms = new AlarmText(shown);
    }

    @Override
    public void alarm(Alarm.Event event, LiveState state) {
        String bell = event.kind() == Alarm.Event.Kind.CLEARED ? "" : BELL;
        out.timed(state.at().wallMs(), List.of(alarms.text(event) + bell));
    }

    @Override
    public void said(ArrivalTime at, Finding finding) {
        if (ending && finding.code() == FindingCode.WIRE_UNPLUGGED) {
            return;
        }
        found.add(finding.code());
        boolean isUrgent = running && finding.code() == FindingCode.WIRE_UNPLUGGED;
        out.timed(at.wallMs(), List.of(words.finding(finding) + (isUrgent ? BELL : "")));
    }

    @Override
    public void pullEnded(LiveState state, MeasuredPull.Curve pull) {
        begun = true;
        List<String> lines = new ArrayList<>();
        if (isNewest(pull.pull(), state) && state.holding().isEmpty()) {
            state.advice()
                    .filter(advice -> isNews(advice) || state.nextPull() != saidOfPull)
                    .ifPresent(advice -> lines.addAll(next(advice, state)));
        }
        cooling = state.waitBeforeNextS().isPresent();
        lines.addAll(words.pull(state.result(), pull.pull()));
        state.result().pulls().stream()
                .flatMap(ended -> ended.findings().stream())
                .filter(finding -> finding.severity() != Finding.Severity.NOTE)
                .forEach(finding -> found.add(finding.code()));
        lines.addAll(words.found(state.result(), found));
        Optional<String> gaps = WatchText.of(state.result());
        gaps.filter(line -> !gapsSaid.equals(gaps)).ifPresent(lines::add);
        gapsSaid = gaps;
        out.timed(state.at().wallMs(), lines);
    }

    private List<String> next(Advice advice, LiveState state) {
        said = Optional.of(advice);
        saidOfPull = state.nextPull();
        OptionalDouble waitS = state.waitBeforeNextS();
        return waitS.isPresent() ? words.afterCoolDown(advice, waitS.getAsDouble()) : words.next(advice);
    }

    /** Several pulls may come in one file; only behind the last of them the next setting is of use. */
    private static boolean isNewest(MeasuredPull pull, LiveState state) {
        return state.result().pulls().stream().noneMatch(other -> other.number() > pull.number());
    }

    @Override
    public void changed(LiveState state) {
        if (!begun) {
            begun = true;
            cooling = state.waitBeforeNextS().isPresent();
            resumed(state);
        }
        List<String> lines = new ArrayList<>();
        List<OperatorAction> done = state.acts().all();
        for (OperatorAction act : done.subList(Math.min(acts, done.size()), done.size())) {
            if (!isOwn(act)) {
                lines.add(ActText.taken(act));
            }
        }
        acts = done.size();
        if (state.pullSinceS().isPresent() && !running) {
            lines.add(words.running(state.nextPull()));
            if (state.coolDownLeftS().isPresent()) {
                lines.add(words.tooSoon(state.nextPull(), state.coolDownLeftS().getAsDouble()));
            }
        }
        if (cooling && state.coolDownLeftS().isEmpty() && state.pullSinceS().isEmpty()) {
            lines.add(words.cooledDown());
            holdSaid = holdSaid.filter(HoldNow::isOver);
            said = Optional.empty();
        }
        cooling = cooling && state.coolDownLeftS().isPresent();
        running = state.pullSinceS().isPresent();
        hold(state).ifPresent(lines::add);
        state.advice()
                .filter(advice -> !running && state.holding().isEmpty() && isNews(advice))
                .ifPresent(advice -> lines.addAll(next(advice, state)));
        waiting(state).ifPresent(lines::add);
        lines.addAll(failing(state));
        out.timed(state.at().wallMs(), lines);
    }

    /** What was done and found before a session was resumed was said then. */
    private void resumed(LiveState state) {
        if (!state.result().pulls().isEmpty()) {
            acts = state.acts().all().size();
            state.result().found().forEach(finding -> found.add(finding.code()));
        }
    }

    /** What the session took down of its own accord is said with the pull. */
    private static boolean isOwn(OperatorAction act) {
        return act instanceof OperatorAction.Setting setting
                && (setting.assumed()
                        || (!setting.setting().hasValues() && setting.setting().knock() == KnockMark.NOT_MEASURED));
    }

    /** Numbers behind an advice change all the time while something is waited for; that alone is no news. */
    private boolean isNews(Advice advice) {
        return said.isEmpty()
                || advice.action() != said.get().action()
                || advice.code() != said.get().code()
                || !advice.setting().equals(said.get().setting())
                || !advice.waitFor()
                        .map(wait -> wait.condition())
                        .equals(said.get().waitFor().map(wait -> wait.condition()));
    }

    /** What to do at held speeds, each time that it changes. */
    private Optional<String> hold(LiveState state) {
        Optional<HoldNow> now = state.hold().filter(hold -> hold.step() != HoldNow.Step.HOLD);
        if (now.isEmpty() || now.map(LiveTalk::gist).equals(holdSaid)) {
            return Optional.empty();
        }
        holdSaid = now.map(LiveTalk::gist);
        HoldNow.Step step = now.get().step();
        String line = step == HoldNow.Step.GO && state.coolDownLeftS().isPresent()
                ? HoldText.afterCoolDown(now.get(), state.coolDownLeftS().getAsDouble())
                : HoldText.sentence(now.get());
        return Optional.of(step.isClose() ? line + BELL : line);
    }

    /** The advance that is asked for at a held speed. */
    private static Optional<EngineSetting> asked(HoldNow now) {
        return now.advanceDeg().isPresent()
                ? Optional.of(EngineSetting.ofNumbers(
                        Optional.of(Advance.ofDeg(now.advanceDeg().getAsDouble())), Optional.empty(), Optional.empty()))
                : Optional.empty();
    }

    private static HoldNow gist(HoldNow now) {
        return now.withLeftS(OptionalDouble.empty());
    }

    private Optional<String> waiting(LiveState state) {
        boolean due = state.at().seconds() - waitingSaidS >= WAITING_EVERY_S;
        Optional<Advice> waits = state.advice().filter(advice -> advice.action() == Action.WAIT && !running);
        if (waits.isEmpty() || !due) {
            return Optional.empty();
        }
        waitingSaidS = state.at().seconds();
        return words.waiting(waits.get(), state.conditions());
    }

    /** What is not kept stays said as long as it is so. */
    private List<String> failing(LiveState state) {
        if (state.failing().isEmpty()) {
            failingSaidS = state.at().seconds();
            return List.of();
        }
        if (state.at().seconds() - failingSaidS < FAILING_EVERY_S) {
            return List.of();
        }
        failingSaidS = state.at().seconds();
        return state.failing().stream().map(words::still).toList();
    }

    /** Does what was typed; false when the session is to end. */
    boolean answer(String line, LiveSession session) {
        LiveState state = session.state();
        Answers answers = new Answers(session, state);
        new LiveTyped(
                        new LiveTyped.Day(
                                state.plan(),
                                state.nextPull(),
                                state.pullSinceS().isPresent(),
                                state.result().unwatchedNow()),
                        answers)
                .read(line);
        return answers.goesOn;
    }

    /** What becomes of a typed line. */
    private final class Answers implements LiveTyped.Reply {
        private final LiveSession session;
        private final LiveState state;
        private boolean goesOn = true;

        Answers(LiveSession session, LiveState state) {
            this.session = session;
            this.state = state;
        }

        @Override
        public void act(OperatorAction act) {
            session.tell(act);
        }

        private Optional<EngineSetting> proposed() {
            return state.holding().isPresent()
                    ? state.holding().flatMap(LiveTalk::asked)
                    : state.advice().flatMap(Advice::setting);
        }

        @Override
        public void asProposed() {
            proposed().ifPresentOrElse(this::set, () -> wrong(LiveText.NOTHING_PROPOSED));
        }

        @Override
        public void set(EngineSetting typed) {
            EngineSetting setting = typed.orElse(proposed().orElseGet(EngineSetting::none));
            new SettingDoubt(state.plan(), state.result()).of(setting).ifPresent(this::wrong);
            session.tell(new OperatorAction.Setting(state.nextPull(), AskedSetting.ofNumbers(setting), false));
        }

        @Override
        public void why() {
            out.answer(
                    state.holding().isPresent()
                            ? List.of(HoldText.sentence(state.holding().get()), HoldText.HOW)
                            : state.advice().map(words::why).orElse(List.of(LiveText.NOTHING_SWEPT)));
        }

        @Override
        public void show() {
            out.lines(List.of(new AdviseText(shown).advise(state.result()).stripTrailing()));
        }

        @Override
        public void help() {
            out.lines(List.of(LiveTyped.help(
                            "say that what is proposed is set in the engine",
                            "say what else is set for the pull that is running or comes next: advance and lambda")
                    .stripTrailing()));
        }

        @Override
        public void end() {
            goesOn = false;
        }

        @Override
        public void wrong(String message) {
            out.answer(List.of(message));
        }
    }

    /** The session closes its ports now, which is no news. */
    void ending() {
        ending = true;
    }

    /** Says once how the session ended. */
    synchronized void ended(LiveState state) {
        if (!ended) {
            ended = true;
            out.timed(
                    state.at().wallMs(),
                    words.ended(state.result(), state.capture().folder().toString()));
        }
    }
}
