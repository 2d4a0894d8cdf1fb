package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.TorqueLeft;
import org.nextpull.unit.Lambda;

/** What stays in the engine if the day ended now. */
final class Leaving {
    private final DayView view;
    private final DayReadings maps;
    private final AllowedSettings allowed;

    Leaving(DayView view, DayReadings maps, AllowedSettings allowed) {
        this.view = view;
        this.maps = maps;
        this.allowed = allowed;
    }

    /** What may be left where no pull gave torque, but one met something. */
    Optional<Chosen> ofNothingRead() {
        return view.here().stream().allMatch(view::isClean)
                ? Optional.empty()
                : maps.present().flatMap(present -> retreat(present, allowed.startLambda(), List.of(), List.of()));
    }

    /** What stays in the engine if the day ended now: the setting that was proven, else the best of those that were run clean. */
    Optional<Chosen> of(Judgement.Known known) {
        return known.answer()
                .leave()
                .map(setting -> new Chosen(
                        settable(setting),
                        by(known.answer()),
                        proof(known, besideBestDeg(known, setting), Chosen.Standing.PROVEN)))
                .or(() -> bestRun(known))
                .or(() -> {
                    if (view.here().stream().allMatch(view::isClean)) {
                        return Optional.empty();
                    }
                    Chosen.Proof proof = proof(known, 0, Chosen.Standing.NOT_RUN);
                    return retreat(known.state().present(), known.state().lambda(), proof.bracketed(), proof.open());
                });
    }

    private Optional<Chosen> retreat(
            SparkMap present, Optional<Lambda> lambda, List<Factor> bracketed, List<Factor> open) {
        return Optional.of(allowed.retreat(present))
                .filter(allowed::isWithinPlan)
                .map(map -> new Chosen(
                        maps.ignition().setting(map, lambda),
                        view.blocks().hasKnock(view.fuel()) ? ChosenBy.KNOCK_LIMIT : ChosenBy.PLAN_LIMIT,
                        new Chosen.Proof(bracketed, open, 0, Chosen.Standing.NOT_RUN)));
    }

    private EngineSetting settable(EngineSetting run) {
        Optional<Lambda> lambda = run.lambda()
                .map(measured -> view.mixture()
                        .map(axis -> Lambda.of(axis.again(measured.value())))
                        .orElse(measured));
        return allowed.proposal(EngineSetting.of(maps.atCells(run.spark().orElseThrow()), lambda));
    }

    private static ChosenBy by(PlannerDecision.Answer answer) {
        List<ChosenBy> decided = answer.decidedBy();
        return decided.contains(ChosenBy.KNOCK_LIMIT)
                ? ChosenBy.KNOCK_LIMIT
                : decided.contains(ChosenBy.PLAN_LIMIT)
                        ? ChosenBy.PLAN_LIMIT
                        : decided.contains(ChosenBy.HIGHEST_TRIED) ? ChosenBy.HIGHEST_TRIED : ChosenBy.PEAK;
    }

    /** How far a setting lies above the one number that is stated as the best. */
    private static double besideBestDeg(Judgement.Known known, EngineSetting setting) {
        return known.timing()
                .flatMap(sweep -> sweep.optimum()
                        .map(Optimum::best)
                        .or(() -> sweep.capped().map(SweepAnswer.Capped::best)))
                .flatMap(best -> setting.spark().filter(SparkMap::isFlat).map(spark -> spark.degAt(0) - best))
                .orElse(0.0);
    }

    private Chosen.Proof proof(Judgement.Known known, double besideBest, Chosen.Standing standing) {
        List<Factor> bracketed = new ArrayList<>();
        List<Factor> open = new ArrayList<>();
        if (maps.ignition() != Ignition.STANDING) {
            boolean isBracketed = known.timing()
                    .map(SweepAnswer::bracketed)
                    .orElseGet(() -> known.state().rows().stream().allMatch(AnswerRow::isBracketed));
            (isBracketed ? bracketed : open).add(Factor.TIMING);
        }
        if (view.mixture().isPresent()) {
            boolean isBracketed = known.mixture().filter(SweepAnswer::bracketed).isPresent();
            (isBracketed ? bracketed : open).add(Factor.MIXTURE);
        }
        return new Chosen.Proof(bracketed, open, besideBest, standing);
    }

    private Optional<Chosen> bestRun(Judgement.Known known) {
        List<TriedPull> clean = known.evidence().pulls().stream()
                .filter(pull -> pull.isClean() && pull.isRunOver(maps.rows()))
                .filter(pull -> isUnder(known.answer(), pull.spark()))
                .filter(pull -> allowed.isWithinPlan(pull))
                .toList();
        Optional<Lambda> best =
                maps.sweepsMixture() ? known.evidence().posterior().meanBestLambda() : Optional.empty();
        List<TriedPull> notLean = clean.stream()
                .filter(pull -> best.isEmpty()
                        || pull.lambda().orElseThrow().value() <= best.get().value())
                .toList();
        Chosen.Standing standing =
                known.evidence().pulls().stream().filter(TriedPull::isClean).count() == 1
                        ? Chosen.Standing.ONLY_ONE
                        : Chosen.Standing.NOT_PROVEN;
        return (notLean.isEmpty() ? clean : notLean)
                .stream()
                        .min(Comparator.comparingDouble(
                                pull -> left(known, pull).expectedPercent()))
                        .map(pull -> new Chosen(
                                settable(EngineSetting.of(pull.spark(), pull.lambda())),
                                ChosenBy.HIGHEST_TRIED,
                                proof(known, 0, standing)));
    }

    private boolean isUnder(PlannerDecision.Answer answer, SparkMap map) {
        double[] rows = maps.rows();
        for (int r = 0; r < rows.length; r++) {
            if (map.degAt(rows[r]) > answer.caps().deg(r) + 1e-9) {
                return false;
            }
        }
        return true;
    }

    private TorqueLeft left(Judgement.Known known, TriedPull pull) {
        return known.evidence()
                .aim(
                        maps.sweepsMixture() ? pull.lambda() : Optional.empty(),
                        known.answer().caps())
                .left(pull.spark().degAt(maps.rows()));
    }
}
