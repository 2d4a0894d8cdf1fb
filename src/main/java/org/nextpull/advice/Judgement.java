package org.nextpull.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.plan.Limit;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;

/**
 * The verdict of a day by its pulls alone: first what the engine's limits ask for, then what the planner wants, last whether the way there
 * is watched and the temperatures are right for it.
 */
final class Judgement {
    /** Fewer pulls say next to nothing that was not thought before. */
    private static final int LEAST_TO_TEACH = 3;

    private final DayView view;
    private final DayReadings maps;
    private final Ignition ignition;
    private final AllowedSettings allowed;
    private final LimitRules limits;
    private final Leaving leaving;
    private final AdviceCodes codes;
    private Optional<DayEvidence> evidence = Optional.empty();
    private Optional<PlannerDecision> decision = Optional.empty();

    Judgement(DayView view) {
        this.view = view;
        maps = new DayReadings(view);
        ignition = maps.ignition();
        allowed = new AllowedSettings(view, maps);
        limits = new LimitRules(view);
        leaving = new Leaving(view, maps, allowed);
        codes = new AdviceCodes(view, maps);
    }

    Day day() {
        return view.day();
    }

    Verdict verdict() {
        if (!maps.hasReadings()) {
            return unread(leaving.ofNothingRead(), first());
        }
        if (isBlind()) {
            return unread(Optional.empty(), blind());
        }
        DayEvidence evidence = evidence();
        PlannerDecision decision = decision();
        PlannerDecision.Answer answer = decision.answer();
        StateReading reading = new StateReading(maps, evidence, answer, allowed.spark());
        FactorReading factors =
                new FactorReading(maps, evidence, answer, view.day().plan().goal());
        MapState state = reading.state(ignition.isMap() ? factors.gain() : Optional.empty());
        Optional<SweepAnswer> timing = ignition.isMap() || ignition == Ignition.STANDING
                ? Optional.empty()
                : Optional.of(factors.timing(reading.exclusions()));
        Optional<SweepAnswer> mixture = maps.sweepsMixture() ? Optional.of(factors.mixture()) : Optional.empty();
        Known known = new Known(evidence, decision, state, timing, mixture);
        Optional<Chosen> leave = leaving.of(known);
        return new Verdict(
                timing,
                mixture,
                Optional.of(state).filter(found -> ignition.isMap()),
                leave,
                advice(known, leave),
                maps.used().size() < LEAST_TO_TEACH ? Optional.empty() : Optional.of(evidence.posterior()),
                new MapFindings(view, maps).said());
    }

    private DayEvidence evidence() {
        DayEvidence found = evidence.orElseGet(() -> new DayEvidence(
                SurfacePosterior.of(new DaySurface(view, maps).surface()),
                maps.tried(),
                maps.levels(),
                maps.present().orElseThrow(),
                maps.earlier()));
        evidence = Optional.of(found);
        return found;
    }

    private PlannerDecision decision() {
        PlannerDecision found = decision.orElseGet(() -> new DayPlanner(allowed.rules()).decide(evidence()));
        decision = Optional.of(found);
        return found;
    }

    /**
     * Whether the planner wants a pull and nothing that was met stands in its way: then the verdict is no stop. Costs less than the verdict,
     * which also says what the pulls show.
     */
    boolean wantsPull() {
        return maps.hasReadings()
                && !isBlind()
                && limits.ending().isEmpty()
                && limits.tooHotOrLean().isEmpty()
                && allowed.hasStartedLow()
                && decision() instanceof PlannerDecision.Pull pull
                && allowed.hotEnough(pull.setting()).isPresent();
    }

    /** Of a day whose pulls say nothing of what is swept. */
    private Verdict unread(Optional<Chosen> leave, Advice advice) {
        return new Verdict(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                leave,
                advice,
                Optional.empty(),
                new MapFindings(view, maps).said());
    }

    /** Whether a setting goes beyond what was run clean. */
    boolean isDaring(EngineSetting setting) {
        return maps.hasReadings()
                && maps.present()
                        .filter(present -> allowed.isDaring(setting.counted().orElse(present), setting.lambda()))
                        .isPresent();
    }

    /** All that the pulls say. */
    record Known(
            DayEvidence evidence,
            PlannerDecision decision,
            MapState state,
            Optional<SweepAnswer> timing,
            Optional<SweepAnswer> mixture) {
        PlannerDecision.Answer answer() {
            return decision.answer();
        }
    }

    /** A setting that is wanted. */
    private record Draft(
            Action action, AdviceCode code, EngineSetting setting, Reason reason, boolean searchesMixture) {}

    /** The first pull: the plan's start, or the present map moved by it; the map as it stands where nobody knows it yet. */
    private Advice first() {
        Optional<Chosen> leave = leaving.ofNothingRead();
        Optional<Reason.LimitReached> ending = limits.ending();
        if (ending.isPresent()) {
            return stop(AdviceCode.LIMIT_MET, ending.get(), leave);
        }
        if (view.here().size() >= view.day().plan().goal().maxPulls()) {
            return stop(AdviceCode.BUDGET, new Reason.Nothing(view.here().size()), leave);
        }
        Optional<Reason.LimitReached> heat = limits.tooHotOrLean();
        Optional<Lambda> lambda = heat.flatMap(met -> limits.oneStepRicher()).or(allowed::startLambda);
        Optional<SparkMap> map = maps.present().map(allowed::first);
        if (heat.isPresent() && limits.oneStepRicher().isEmpty()) {
            return stop(AdviceCode.LIMIT_MET, heat.get(), leave);
        }
        if (map.isPresent() && !allowed.isWithinPlan(map.get())) {
            return nothingLeft(leave);
        }
        EngineSetting setting = map.map(found -> ignition.setting(found, lambda))
                .orElse(EngineSetting.ofNumbers(Optional.empty(), Optional.empty(), lambda));
        if (heat.isPresent()) {
            return cooled(heat.get(), setting, leave);
        }
        return whenReady(
                new Draft(
                        Action.PULL,
                        AdviceCode.BASELINE,
                        setting,
                        new Reason.First(ignition, allowed.startShiftDeg()),
                        false),
                leave);
    }

    /** Whether only the mixture is swept, and it is not known of every pull: then nothing can be said of it. */
    private boolean isBlind() {
        return ignition == Ignition.STANDING && view.day().plan().mixture().isPresent() && !maps.sweepsMixture();
    }

    private Advice blind() {
        return limits.ending()
                .map(met -> stop(AdviceCode.LIMIT_MET, met, Optional.empty()))
                .orElseGet(() -> new Advice(
                        Action.WAIT,
                        AdviceCode.NOT_WATCHED,
                        Optional.of(EngineSetting.ofNumbers(Optional.empty(), Optional.empty(), allowed.startLambda())),
                        new Reason.NotWatched(List.of(Limit.LEAN), false),
                        Optional.empty(),
                        Optional.empty()));
    }

    private Advice advice(Known known, Optional<Chosen> leave) {
        Optional<Reason.LimitReached> ending = limits.ending();
        if (ending.isPresent()) {
            return stop(AdviceCode.LIMIT_MET, ending.get(), leave);
        }
        if (known.decision() instanceof PlannerDecision.Stop stop
                && stop.reason() == PlannerDecision.StopReason.BUDGET) {
            return stop(stop.reason(), known, leave);
        }
        Optional<Reason.LimitReached> heat = limits.tooHotOrLean();
        if (heat.isPresent() && !isCooledByAdvance(known)) {
            return richer(heat.get(), known.state(), leave);
        }
        if (known.decision() instanceof PlannerDecision.Stop stop) {
            return stop(stop.reason(), known, leave);
        }
        if (!allowed.hasStartedLow()) {
            return first();
        }
        PlannerDecision.Pull pull = (PlannerDecision.Pull) known.decision();
        Optional<EngineSetting> setting = allowed.hotEnough(pull.setting());
        if (setting.isEmpty()) {
            return nothingLeft(leave);
        }
        Reason reason = new Reason.Searching(
                ignition,
                pull.purpose(),
                view.here().size(),
                known.state().leftAtPeak(),
                known.state().scatterPercent(),
                isUnheard(),
                rise(known.answer()));
        Draft draft = new Draft(
                wasRun(setting.get()) ? Action.REPEAT : Action.PULL,
                codes.of(pull.purpose(), setting.get()),
                allowed.proposal(setting.get()),
                reason,
                pull.purpose() == PlannerDecision.Purpose.EXPLORE
                        || (pull.purpose() == PlannerDecision.Purpose.CLIMB && maps.sweepsMixture()));
        Optional<Reason.NotWatched> held = allowed.held(setting.get(), draft.searchesMixture());
        if (held.isPresent()) {
            return new Advice(
                    Action.WAIT,
                    AdviceCode.NOT_WATCHED,
                    Optional.of(allowed.proposal(allowed.proven(setting.get()))),
                    held.get(),
                    Optional.empty(),
                    leave);
        }
        return heat.map(hot -> cooled(hot, draft.setting(), leave)).orElseGet(() -> whenReady(draft, leave));
    }

    /** Whether the last pull cleared the step to more advance though it was hot, and the search goes that way at every speed. */
    private boolean isCooledByAdvance(Known known) {
        List<TriedPull> pulls = known.evidence().pulls();
        TriedPull last = pulls.get(pulls.size() - 1);
        return last.isCooledByAdvance()
                && known.decision() instanceof PlannerDecision.Pull next
                && Arrays.stream(maps.rows())
                        .allMatch(rpm -> next.setting().spark().orElseThrow().degAt(rpm)
                                >= last.spark().degAt(rpm) + maps.grid().resolutionDeg() - 1e-9);
    }

    private Advice stop(PlannerDecision.StopReason reason, Known known, Optional<Chosen> leave) {
        Optional<Reason.LimitReached> met =
                view.blocks().leanCeilingOfLimits(view.fuel()).isPresent() ? limits.lastMet() : Optional.empty();
        if (reason == PlannerDecision.StopReason.NO_ROOM) {
            return nothingLeft(leave);
        }
        return reason == PlannerDecision.StopReason.PLAN_LIMITED && ignition == Ignition.STANDING && met.isPresent()
                ? stop(AdviceCode.LIMIT_MET, met.get(), leave)
                : stop(codes.of(reason, known.answer()), ended(known.state()), leave);
    }

    /** Whether a clean pull that counts had this setting, and none met anything at it: such a setting is never called a repeat. */
    private boolean wasRun(EngineSetting setting) {
        List<TriedPull> tried = maps.tried();
        boolean wasRun = false;
        for (int i = 0; i < tried.size(); i++) {
            TriedPull pull = tried.get(i);
            if (isAt(setting, pull)) {
                if (!view.isClean(maps.counting().get(i))) {
                    return false;
                }
                wasRun |= pull.isClean() && pull.isRunOver(maps.rows());
            }
        }
        return wasRun;
    }

    private boolean isAt(EngineSetting setting, TriedPull pull) {
        return (ignition == Ignition.STANDING || maps.isSame(setting.spark().orElseThrow(), pull.spark()))
                && (!maps.sweepsMixture() || maps.isSameMixture(setting.lambda(), pull.lambda()));
    }

    /** What was met leaves no setting to run. */
    private Advice nothingLeft(Optional<Chosen> leave) {
        Optional<MeasuredPull> knock = view.day().pulls().stream()
                .filter(pull -> pull.setting().isOnFuel(view.fuel()))
                .filter(pull -> pull.knock().isHeard() && !view.isClean(pull))
                .filter(pull -> ignition.number(pull).isPresent())
                .reduce((first, second) -> second);
        Optional<Reason.LimitReached> limit = limits.lastMet();
        if (knock.isEmpty() && limit.isPresent()) {
            return stop(AdviceCode.LIMIT_MET, limit.get(), leave);
        }
        Reason reason = knock.<Reason>map(pull -> new Reason.Knocked(
                        pull.number(),
                        ignition.number(pull).orElseThrow().deg(),
                        view.day().plan().limits().knockMarginDeg()))
                .orElse(new Reason.Nothing(view.here().size()));
        return stop(AdviceCode.KNOCK_LIMITED, reason, leave);
    }

    private Advice whenReady(Draft draft, Optional<Chosen> leave) {
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

    private Advice richer(Reason.LimitReached heat, MapState state, Optional<Chosen> leave) {
        Optional<EngineSetting> setting = limits.oneStepRicher()
                .flatMap(lambda -> allowed.held(EngineSetting.of(state.last(), Optional.of(lambda))))
                .map(allowed::proposal);
        if (setting.isEmpty()) {
            return stop(AdviceCode.LIMIT_MET, heat, leave);
        }
        return cooled(heat, setting.get(), leave);
    }

    private Advice cooled(Reason.LimitReached heat, EngineSetting setting, Optional<Chosen> leave) {
        Optional<WaitFor> cooling = limits.exhaustCooling(heat);
        AdviceCode code = heat.limit() == Limit.EXHAUST ? AdviceCode.COOL_EXHAUST : AdviceCode.TOO_LEAN;
        return new Advice(
                cooling.isPresent() ? Action.WAIT : Action.PULL, code, Optional.of(setting), heat, cooling, leave);
    }

    private static Advice stop(AdviceCode code, Reason reason, Optional<Chosen> leave) {
        return new Advice(Action.STOP, code, Optional.empty(), reason, Optional.empty(), leave);
    }

    private Reason ended(MapState state) {
        return new Reason.Ended(ignition, view.here().size(), state.leftAtPeak(), state.scatterPercent());
    }

    private Optional<Reason.Searching.Rise> rise(PlannerDecision.Answer answer) {
        return Optional.of(answer.pullsToLeast())
                .filter(pulls -> pulls > 1 && maps.used().stream().anyMatch(MeasuredPull::isHeld))
                .map(pulls -> new Reason.Searching.Rise(pulls, allowed.spark().largestStepDeg()));
    }

    private boolean isUnheard() {
        List<MeasuredPull> here = view.here();
        return !here.get(here.size() - 1).knock().isMeasured();
    }
}
