package org.nextpull.advice;

import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.finding.Finding;
import org.nextpull.plan.Limit;

/**
 * Says the next step of a day: first what the engine's limits ask for, then what the pull budget allows, then what the stage of the
 * sweep wants, last whether the temperatures are right for it.
 */
public final class Advisor {
    private final DayView view;

    private Advisor(DayView view) {
        this.view = view;
    }

    /** The verdict of a day so far; a stop that was said stands until something opens the day again. */
    public static Verdict judge(Day day) {
        return MapDay.isOf(day)
                ? new MapAdvisor(DayView.of(day)).verdict()
                : new KeptStop(day, Advisor::byPulls).verdict();
    }

    /** Why there can be no verdict of a day whose ignition holds a map; empty where there can. */
    public static Optional<Finding> hindrance(Day day) {
        return MapDay.isOf(day) ? new MapDay(DayView.of(day)).hindrance() : Optional.empty();
    }

    private static Verdict byPulls(Day day) {
        return new Advisor(DayView.of(day)).verdict(new LearnedJudge(day));
    }

    private Verdict verdict(SweepJudge judge) {
        Outlook outlook = new Stages(view, judge).outlook();
        Optional<Chosen> leave = outlook.chosen()
                .filter(chosen -> !view.isForbidden(chosen.setting()))
                .or(() -> BestSoFar.of(view, outlook));
        return new Verdict(
                outlook.timing().map(SweepState::answer),
                outlook.mixture().map(SweepState::answer),
                Optional.empty(),
                leave,
                advice(outlook, leave),
                Stream.of(outlook.timing(), outlook.mixture())
                        .flatMap(Optional::stream)
                        .flatMap(state -> state.findings().stream())
                        .toList());
    }

    private Advice advice(Outlook outlook, Optional<Chosen> leave) {
        LimitRules limits = new LimitRules(view);
        Optional<Reason.LimitReached> ending = limits.ending();
        if (ending.isPresent()) {
            return stop(AdviceCode.LIMIT_MET, ending.get(), leave);
        }
        Optional<Draft> draft = outlook.draft();
        boolean over = draft.filter(next -> next.action() == Action.STOP).isPresent();
        if (!over && view.here().size() >= view.day().plan().goal().maxPulls()) {
            return stop(
                    AdviceCode.BUDGET,
                    new Reason.Ended(evidence(outlook), view.here().size()),
                    leave);
        }
        Optional<Reason.LimitReached> heat = limits.tooHotOrLean();
        if (heat.isPresent()) {
            return richer(limits, heat.get(), leave);
        }
        return draft.map(next -> passed(limits, next, leave)).orElseGet(() -> nothingLeft(limits, leave));
    }

    private Advice passed(LimitRules limits, Draft draft, Optional<Chosen> leave) {
        if (draft.action() == Action.STOP) {
            return stop(draft.code(), draft.reason(), leave);
        }
        Gate gate = new Gate(view);
        Optional<Proposal> setting = gate.pass(draft.setting(), factorOf(draft.reason()));
        if (setting.isEmpty()) {
            return nothingLeft(limits, leave);
        }
        Optional<Reason.NotWatched> held = view.guards().held(setting.get(), factorOf(draft.reason()));
        if (held.isPresent()) {
            Proposal proven = view.guards().proven(setting.get());
            return new Advice(
                    Action.WAIT,
                    AdviceCode.NOT_WATCHED,
                    // where knock has since forbidden what was proven, only what is wanted is left, which has passed
                    // the gate
                    gate.pass(proven, factorOf(draft.reason())).or(() -> setting),
                    held.get(),
                    Optional.empty(),
                    leave);
        }
        Optional<WaitFor> waiting = limits.waiting().or(limits::tooWarm);
        if (waiting.isPresent()) {
            Reason reason = new Reason.OutOfWindow(
                    waiting.get().condition(),
                    waiting.get().now(),
                    waiting.get().want());
            return new Advice(Action.WAIT, AdviceCode.OUT_OF_WINDOW, setting, reason, waiting, leave);
        }
        boolean moved = !setting.get().equals(draft.setting());
        Action action =
                moved && draft.action() == Action.REPEAT && !gate.wasRun(setting.get()) ? Action.PULL : draft.action();
        return new Advice(action, draft.code(), setting, draft.reason(), Optional.empty(), leave);
    }

    private static Factor factorOf(Reason reason) {
        if (reason instanceof Reason.Searching searching) {
            return searching.factor();
        }
        return reason instanceof Reason.BackedOff || reason instanceof Reason.RichFirst
                ? Factor.MIXTURE
                : Factor.TIMING;
    }

    private Advice richer(LimitRules limits, Reason.LimitReached heat, Optional<Chosen> leave) {
        Optional<Proposal> setting =
                limits.oneStepRicher().flatMap(wanted -> new Gate(view).pass(wanted, Factor.MIXTURE));
        if (setting.isEmpty()) {
            return stop(AdviceCode.LIMIT_MET, heat, leave);
        }
        Optional<WaitFor> cooling = limits.exhaustCooling(heat);
        AdviceCode code = heat.limit() == Limit.EXHAUST ? AdviceCode.COOL_EXHAUST : AdviceCode.TOO_LEAN;
        Action action = cooling.isPresent() ? Action.WAIT : Action.PULL;
        return new Advice(action, code, setting, heat, cooling, leave);
    }

    private static Advice stop(AdviceCode code, Reason reason, Optional<Chosen> leave) {
        return new Advice(Action.STOP, code, Optional.empty(), reason, Optional.empty(), leave);
    }

    private static Optional<Evidence> evidence(Outlook outlook) {
        return outlook.timing().or(outlook::mixture).map(SweepState::evidence);
    }

    /** What was met leaves no setting to run. */
    private Advice nothingLeft(LimitRules limits, Optional<Chosen> leave) {
        double margin = view.day().plan().limits().knockMarginDeg();
        Optional<Reason> knock = view.day().pulls().stream()
                .filter(pull -> pull.setting().isOnFuel(view.fuel()))
                .filter(pull -> pull.knock().isHeard() && view.advanceOf(pull).isPresent())
                .filter(pull -> !view.isClean(pull))
                .reduce((first, second) -> second)
                .map(pull ->
                        new Reason.Knocked(pull.number(), view.advanceOf(pull).getAsDouble(), margin));
        Optional<Reason.LimitReached> limit = limits.lastMet();
        if (knock.isEmpty() && limit.isPresent()) {
            return stop(AdviceCode.LIMIT_MET, limit.get(), leave);
        }
        Reason reason =
                knock.orElse(new Reason.Ended(Optional.empty(), view.here().size()));
        return stop(AdviceCode.KNOCK_LIMITED, reason, leave);
    }
}
