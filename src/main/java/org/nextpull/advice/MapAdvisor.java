package org.nextpull.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.fit.TorqueLeft;
import org.nextpull.plan.Limit;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;

/**
 * Says the next step of a day whose ignition holds a map: first what the engine's limits ask for, then what the planner of maps wants,
 * last whether the way there is watched and the temperatures are right for it.
 */
final class MapAdvisor {
    private final DayView view;
    private final MapDay maps;
    private final MapLimits allowed;
    private final LimitRules limits;

    MapAdvisor(DayView view) {
        this.view = view;
        maps = new MapDay(view);
        allowed = new MapLimits(view, maps);
        limits = new LimitRules(view);
    }

    Verdict verdict() {
        if (!maps.hasReadings()) {
            return verdict(Optional.empty(), Optional.empty(), first());
        }
        MapEvidence evidence = new MapEvidence(
                SurfacePosterior.of(maps.surface()),
                maps.tried(),
                maps.levels(),
                maps.present().orElseThrow(),
                maps.earlier());
        MapDecision decision = new MapPlanner(allowed.rules()).decide(evidence);
        MapState state = new MapReading(maps, evidence, decision.answer(), allowed.spark()).state();
        Optional<Chosen> leave = leave(evidence, decision.answer(), state);
        return verdict(Optional.of(state), leave, advice(decision, state, leave));
    }

    private Verdict verdict(Optional<MapState> state, Optional<Chosen> leave, Advice advice) {
        return new Verdict(Optional.empty(), Optional.empty(), state, leave, advice, maps.findings());
    }

    /** The first pull: the present map moved by the plan's start; the map as it stands where nobody knows it yet. */
    private Advice first() {
        Optional<Reason.LimitReached> ending = limits.ending();
        if (ending.isPresent()) {
            return stop(AdviceCode.LIMIT_MET, ending.get(), Optional.empty());
        }
        Optional<Lambda> lambda = allowed.startLambda();
        Optional<SparkMap> map = maps.present().map(present -> allowed.first(present));
        if (map.isPresent() && !allowed.isWithinPlan(map.get())) {
            return stop(AdviceCode.KNOCK_LIMITED, new Reason.Ended(Optional.empty(), 0), Optional.empty());
        }
        Proposal setting = map.map(found -> Proposal.ofMap(found, lambda))
                .orElse(new Proposal(Optional.empty(), Optional.empty(), lambda));
        return whenReady(new Draft(
                Action.PULL, AdviceCode.BASELINE, setting, new Reason.FirstMap(allowed.startShiftDeg()), false));
    }

    /** A setting that is wanted, with what is left in the engine if it has to wait. */
    private record Draft(Action action, AdviceCode code, Proposal setting, Reason reason, boolean searchesMixture) {}

    private Advice advice(MapDecision decision, MapState state, Optional<Chosen> leave) {
        Optional<Reason.LimitReached> ending = limits.ending();
        if (ending.isPresent()) {
            return stop(AdviceCode.LIMIT_MET, ending.get(), leave);
        }
        Optional<Reason.LimitReached> heat = limits.tooHotOrLean();
        if (heat.isPresent()) {
            return richer(heat.get(), state, leave);
        }
        if (decision instanceof MapDecision.Stop stop) {
            return stop(code(stop.reason()), ended(state), leave);
        }
        MapDecision.Pull pull = (MapDecision.Pull) decision;
        Optional<EngineSetting> setting = allowed.hotEnough(pull.setting());
        if (setting.isEmpty()) {
            return limits.lastMet()
                    .map(met -> stop(AdviceCode.LIMIT_MET, met, leave))
                    .orElseGet(() -> stop(AdviceCode.KNOCK_LIMITED, ended(state), leave));
        }
        Reason reason = new Reason.MapSearch(
                pull.purpose(), view.here().size(), state.leftAtPeak(), state.scatterPercent(), isUnheard());
        Draft draft = new Draft(
                Action.PULL,
                code(pull.purpose()),
                proposal(setting.get()),
                reason,
                pull.purpose() == PullPurpose.EXPLORE);
        Optional<Reason.NotWatched> held = allowed.held(setting.get(), draft.searchesMixture());
        if (held.isPresent()) {
            return new Advice(
                    Action.WAIT,
                    AdviceCode.NOT_WATCHED,
                    Optional.of(proposal(allowed.proven(setting.get()))),
                    held.get(),
                    Optional.empty(),
                    leave);
        }
        return whenReady(draft, leave);
    }

    private Advice whenReady(Draft draft) {
        return whenReady(draft, Optional.empty());
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
        Optional<Proposal> setting = limits.oneStepRicher()
                .flatMap(wanted -> wanted.lambda())
                .flatMap(lambda -> allowed.held(EngineSetting.of(state.last(), Optional.of(lambda))))
                .map(this::proposal);
        if (setting.isEmpty()) {
            return stop(AdviceCode.LIMIT_MET, heat, leave);
        }
        Optional<WaitFor> cooling = limits.exhaustCooling(heat);
        AdviceCode code = heat.limit() == Limit.EXHAUST ? AdviceCode.COOL_EXHAUST : AdviceCode.TOO_LEAN;
        return new Advice(cooling.isPresent() ? Action.WAIT : Action.PULL, code, setting, heat, cooling, leave);
    }

    private static Advice stop(AdviceCode code, Reason reason, Optional<Chosen> leave) {
        return new Advice(Action.STOP, code, Optional.empty(), reason, Optional.empty(), leave);
    }

    private Reason ended(MapState state) {
        return new Reason.MapEnded(view.here().size(), state.leftAtPeak(), state.scatterPercent());
    }

    private boolean isUnheard() {
        List<MeasuredPull> here = view.here();
        return !here.get(here.size() - 1).knock().isMeasured();
    }

    private Proposal proposal(EngineSetting setting) {
        return Proposal.ofMap(
                setting.map().orElseThrow(),
                view.day().plan().mixture().isPresent() ? setting.lambda().or(allowed::startLambda) : Optional.empty());
    }

    private static AdviceCode code(PullPurpose purpose) {
        return switch (purpose) {
            case CLIMB -> AdviceCode.CLIMB_TIMING;
            case BRACKET_BELOW, BRACKET_ABOVE -> AdviceCode.BRACKET_TIMING;
            case EXPLORE -> AdviceCode.EXPLORE;
            case LOOK_AGAIN -> AdviceCode.LOOK_AGAIN;
            case PROVE -> AdviceCode.CONFIRM;
        };
    }

    private AdviceCode code(StopReason reason) {
        return switch (reason) {
            case SETTLED -> AdviceCode.SETTLED;
            case SCATTER_LIMITED -> AdviceCode.SCATTER_LIMITED;
            case KNOCK_LIMITED -> AdviceCode.KNOCK_LIMITED;
            case PLAN_LIMITED -> AdviceCode.PLAN_LIMIT;
            case BUDGET -> AdviceCode.BUDGET;
            case NO_ROOM -> view.bans().hasKnock(view.fuel()) ? AdviceCode.KNOCK_LIMITED : AdviceCode.PLAN_LIMIT;
        };
    }

    /** What stays in the engine if the day ended now: the map that was proven, else the best of those that were run clean. */
    private Optional<Chosen> leave(MapEvidence evidence, MapAnswer answer, MapState state) {
        return answer.leave()
                .map(setting -> new Chosen(settable(setting), by(state), proof(state, Chosen.Standing.PROVEN)))
                .or(() -> bestRun(evidence, answer, state))
                .or(() -> Optional.of(allowed.retreat(state.present()))
                        .filter(allowed::isWithinPlan)
                        .map(map -> new Chosen(
                                proposal(EngineSetting.of(map, state.lambda())),
                                view.bans().hasKnock(view.fuel()) ? ChosenBy.KNOCK_LIMIT : ChosenBy.PLAN_LIMIT,
                                proof(state, Chosen.Standing.NOT_RUN))));
    }

    private Proposal settable(EngineSetting run) {
        return proposal(EngineSetting.of(maps.atCells(run.map().orElseThrow()), run.lambda()));
    }

    private static ChosenBy by(MapState state) {
        List<ChosenBy> decided = state.rows().stream().map(MapRow::by).toList();
        return decided.contains(ChosenBy.KNOCK_LIMIT)
                ? ChosenBy.KNOCK_LIMIT
                : decided.contains(ChosenBy.PLAN_LIMIT)
                        ? ChosenBy.PLAN_LIMIT
                        : decided.contains(ChosenBy.HIGHEST_TRIED) ? ChosenBy.HIGHEST_TRIED : ChosenBy.PEAK;
    }

    private static Chosen.Proof proof(MapState state, Chosen.Standing standing) {
        boolean isBracketed = state.rows().stream().allMatch(MapRow::isBracketed);
        List<Factor> timing = List.of(Factor.TIMING);
        return new Chosen.Proof(isBracketed ? timing : List.of(), isBracketed ? List.of() : timing, standing);
    }

    private Optional<Chosen> bestRun(MapEvidence evidence, MapAnswer answer, MapState state) {
        long clean = evidence.pulls().stream().filter(TriedPull::isClean).count();
        Chosen.Standing standing = clean == 1 ? Chosen.Standing.ONLY_ONE : Chosen.Standing.NOT_PROVEN;
        return evidence.pulls().stream()
                .filter(TriedPull::isClean)
                .filter(pull -> isUnder(answer, pull.spark()))
                .min(Comparator.comparingDouble(
                        pull -> left(evidence, answer, pull).expectedPercent()))
                .map(pull -> new Chosen(
                        settable(EngineSetting.of(pull.spark(), pull.lambda())),
                        ChosenBy.HIGHEST_TRIED,
                        proof(state, standing)));
    }

    private boolean isUnder(MapAnswer answer, SparkMap map) {
        double[] rows = maps.rows();
        for (int r = 0; r < rows.length; r++) {
            if (map.degAt(rows[r]) > answer.caps().deg(r) + 1e-9) {
                return false;
            }
        }
        return true;
    }

    private TorqueLeft left(MapEvidence evidence, MapAnswer answer, TriedPull pull) {
        double[] deg = pull.spark().degAt(maps.rows());
        SurfacePosterior posterior = evidence.posterior();
        return (maps.sweepsMixture() ? pull.lambda() : Optional.<Lambda>empty())
                .map(lambda -> posterior.loss(lambda, answer.caps()).of(deg))
                .orElseGet(() -> posterior.loss(answer.caps()).of(deg));
    }
}
