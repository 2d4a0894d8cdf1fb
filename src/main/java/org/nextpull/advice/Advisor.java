package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import org.nextpull.plan.Limit;
import org.nextpull.response.MeasuredPull;

/**
 * Says the next step of a day: first what the engine's limits ask for, then what the pull budget allows, then what the stage of the
 * sweep wants, last whether the temperatures are right for it.
 */
public final class Advisor {
    private final SweepJudge judge;

    private Advisor(SweepJudge judge) {
        this.judge = judge;
    }

    /** The verdict of a day so far. */
    public static Verdict judge(Day day) {
        return new Advisor(new FittedJudge(day)).verdict(day);
    }

    private Verdict verdict(Day day) {
        DayView view = DayView.of(day);
        Outlook outlook = new Stages(view, judge).outlook();
        Optional<Chosen> leave = outlook.chosen().or(() -> BestSoFar.of(view, outlook));
        return new Verdict(
                outlook.timing().map(SweepState::answer),
                outlook.mixture().map(SweepState::answer),
                leave,
                advice(view, outlook, leave),
                List.of());
    }

    private Advice advice(DayView view, Outlook outlook, Optional<Chosen> leave) {
        LimitRules limits = new LimitRules(view);
        Optional<Reason.LimitReached> ending = limits.ending();
        if (ending.isPresent()) {
            return stop(AdviceCode.LIMIT_MET, ending.get(), leave);
        }
        Optional<Reason.LimitReached> heat = limits.tooHotOrLean();
        if (heat.isPresent()) {
            return richer(limits, heat.get(), leave);
        }
        boolean over =
                outlook.draft().map(draft -> draft.action() == Action.STOP).orElse(false);
        if (!over && view.here().size() >= view.day().plan().goal().maxPulls()) {
            return stop(
                    AdviceCode.BUDGET,
                    new Reason.Ended(evidence(outlook), view.here().size()),
                    leave);
        }
        if (outlook.draft().isEmpty()) {
            return stop(AdviceCode.KNOCK_LIMITED, nothingLeft(view), leave);
        }
        return passed(limits, outlook.draft().get(), leave);
    }

    private static Advice passed(LimitRules limits, Draft draft, Optional<Chosen> leave) {
        if (draft.action() == Action.STOP) {
            return stop(draft.code(), draft.reason(), leave);
        }
        Optional<WaitFor> waiting = limits.waiting().or(limits::tooWarm);
        if (waiting.isPresent()) {
            Reason reason = new Reason.OutOfWindow(
                    waiting.get().condition(),
                    waiting.get().now(),
                    waiting.get().want());
            return new Advice(
                    Action.WAIT, AdviceCode.OUT_OF_WINDOW, Optional.of(draft.setting()), reason, waiting, leave);
        }
        return new Advice(
                draft.action(), draft.code(), Optional.of(draft.setting()), draft.reason(), Optional.empty(), leave);
    }

    private static Advice richer(LimitRules limits, Reason.LimitReached heat, Optional<Chosen> leave) {
        Optional<Proposal> setting = limits.oneStepRicher();
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

    private static Reason nothingLeft(DayView view) {
        double margin = view.day().plan().limits().knockMarginDeg();
        return view.here().stream()
                .filter(pull -> pull.knock().isHeard() && view.advanceOf(pull).isPresent())
                .reduce((first, second) -> second)
                .<Reason>map((MeasuredPull pull) ->
                        new Reason.Knocked(pull.number(), view.advanceOf(pull).getAsDouble(), margin))
                .orElse(new Reason.Ended(Optional.empty(), view.here().size()));
    }
}
