package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.fit.Belief;
import org.nextpull.fit.Experience;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;

/**
 * The stages of a day, one factor at a time: baseline, timing, mixture, timing again, confirm, stop. Which stage the day is in is
 * read off its pulls alone, so that a replayed log and a live day get the same answer.
 */
final class Stages {
    /** The peak may move this far, one standard deviation, when the mixture changes. */
    private static final double MIXTURE_MOVES_PEAK_DEG = 2;

    private static final int BASELINES = 2;
    private static final int CONFIRMS = 2;

    private final DayView view;
    private final TimingStage timing;
    private final MixtureStage mixture;
    private final OptionalDouble sweepMixture;

    Stages(DayView view, SweepJudge judge) {
        this.view = view;
        this.timing = new TimingStage(view, judge);
        this.mixture = new MixtureStage(view, judge);
        this.sweepMixture = view.sweepMixture();
    }

    /** What the stages say. */
    Outlook outlook() {
        Optional<SweepState> timed =
                view.timing().isPresent() ? timing.at(sweepMixture, Optional.empty()) : Optional.empty();
        if (view.timing().isPresent()) {
            if (timed.isEmpty() || needsBaseline(view.atMixture(sweepMixture))) {
                return Outlook.unfinished(timed, Optional.empty(), baseline(view.atMixture(sweepMixture)));
            }
            if (!timed.get().isEnded() || view.mixture().isEmpty()) {
                return timed.get().isEnded()
                        ? finish(timed, Optional.empty())
                        : Outlook.unfinished(timed, Optional.empty(), Optional.of(sweepDraft(timed.get(), false)));
            }
        }
        return view.mixture().isEmpty()
                ? new Outlook(timed, Optional.empty(), Optional.empty(), Optional.empty())
                : mixtureStage(timed);
    }

    private Outlook mixtureStage(Optional<SweepState> timed) {
        OptionalDouble best =
                timed.map(state -> OptionalDouble.of(state.next().best())).orElse(OptionalDouble.empty());
        OptionalDouble advance = mixture.advance(best, sweepMixture);
        Optional<SweepState> mixed = mixture.state(advance);
        double start = mixtureStart(advance);
        if (mixed.isEmpty()) {
            return Outlook.unfinished(timed, mixed, Optional.of(startMixture(advance, best, start)));
        }
        if (timed.isEmpty() && needsBaseline(mixture.pulls(advance))) {
            return Outlook.unfinished(timed, mixed, baseline(mixture.pulls(advance)));
        }
        OptionalDouble rich = mixture.richStep(advance, start);
        if (rich.isPresent()) {
            Draft draft = new Draft(
                    Action.PULL,
                    AdviceCode.RICH_STEP,
                    mixtureSetting(advance, rich.getAsDouble()),
                    backedOff(advance, best));
            return Outlook.unfinished(timed, mixed, Optional.of(draft));
        }
        if (!mixed.get().isEnded()) {
            return Outlook.unfinished(timed, mixed, Optional.of(mixtureDraft(mixed.get(), advance)));
        }
        return timed.isEmpty() ? finish(timed, mixed) : checkStage(timed.get(), mixed.get());
    }

    /** The richest mixture of the bracket's advance that was not part of the bracket, or where the plan starts. */
    private double mixtureStart(OptionalDouble advance) {
        Axis axis = view.mixture().orElseThrow();
        double wanted = sweepMixture.orElse(axis.start());
        return view.richEnough(axis, wanted, advance).orElse(axis.start());
    }

    private Outlook checkStage(SweepState timed, SweepState mixed) {
        double lambda = mixed.next().best();
        boolean moved = sweepMixture.isPresent() && Math.abs(lambda - sweepMixture.getAsDouble()) > DayView.ONE_MIXTURE;
        if (!moved) {
            return finish(Optional.of(timed), Optional.of(mixed));
        }
        OptionalDouble at = OptionalDouble.of(lambda);
        Optional<SweepState> checked = timing.at(at, Optional.of(movedPeak(timed.peak())));
        if (checked.isEmpty()) {
            Axis axis = view.timing().orElseThrow();
            double best = Math.min(timed.next().best(), axis.allowed().high());
            Proposal setting = axis.with(mixtureOnly(lambda), withinReach(axis, at, best));
            Draft draft = new Draft(Action.PULL, AdviceCode.CHECK_TIMING, setting, searching(timed));
            return Outlook.unfinished(Optional.of(timed), Optional.of(mixed), Optional.of(draft));
        }
        if (!checked.get().isEnded()) {
            Draft draft = sweepDraft(checked.get(), true);
            return Outlook.unfinished(checked, Optional.of(mixed), Optional.of(draft));
        }
        return finish(checked, Optional.of(mixed));
    }

    private static Belief movedPeak(Belief peak) {
        return new Belief(peak.centre(), Math.hypot(peak.sd(), MIXTURE_MOVES_PEAK_DEG));
    }

    /** A check may not step further from what was clean at that mixture or a leaner one than the plan's step. */
    private double withinReach(Axis axis, OptionalDouble lambda, double wanted) {
        List<MeasuredPull> leaner = view.used().stream()
                .filter(pull -> DayView.mixtureOf(pull).isEmpty()
                        || DayView.mixtureOf(pull).getAsDouble() >= lambda.getAsDouble() - DayView.ONE_MIXTURE)
                .toList();
        OptionalDouble daring = view.mostDaring(axis, leaner);
        OptionalDouble ban = view.bans().advanceCeiling(view.fuel(), lambda);
        double most = daring.isPresent()
                ? Reach.of(
                                axis,
                                view.guards().step(axis),
                                daring.getAsDouble(),
                                ban,
                                leaner,
                                new Reach.Start(StartOfDay.advance(view, axis)))
                        .high()
                : axis.start();
        return axis.round(Math.min(wanted, most));
    }

    private Outlook finish(Optional<SweepState> timed, Optional<SweepState> mixed) {
        Proposal best = bestSetting(timed, mixed);
        Confirmation confirmation = Confirmation.of(view, best);
        ChosenBy by =
                timed.or(() -> mixed).map(state -> Ending.chosenBy(view, state)).orElse(ChosenBy.HIGHEST_TRIED);
        boolean proven = confirmation.done() >= CONFIRMS;
        Chosen.Proof proof = Outlook.unfinished(timed, mixed, Optional.empty())
                .proof(view, proven ? Chosen.Standing.PROVEN : Chosen.Standing.NOT_PROVEN);
        Optional<Chosen> chosen = Optional.of(new Chosen(confirmation.setting(), by, proof));
        if (proven) {
            AdviceCode code =
                    timed.or(() -> mixed).map(state -> Ending.code(view, state)).orElse(AdviceCode.SETTLED);
            Reason reason = new Reason.Ended(
                    timed.or(() -> mixed).map(SweepState::evidence), view.here().size());
            Draft stop = new Draft(Action.STOP, code, confirmation.setting(), reason);
            return new Outlook(timed, mixed, chosen, Optional.of(stop));
        }
        Reason reason = new Reason.Confirming(by, confirmation.done(), CONFIRMS, confirmation.gainPercent());
        Action action = new Gate(view).wasRun(confirmation.setting()) ? Action.REPEAT : Action.PULL;
        Draft draft = new Draft(action, AdviceCode.CONFIRM, confirmation.setting(), reason);
        return new Outlook(timed, mixed, chosen, Optional.of(draft));
    }

    private Proposal bestSetting(Optional<SweepState> timed, Optional<SweepState> mixed) {
        Optional<Lambda> lambda = mixed.map(state -> Lambda.of(state.next().best()))
                .or(() -> view.mixture().isPresent() && sweepMixture.isPresent()
                        ? Optional.of(Lambda.of(sweepMixture.getAsDouble()))
                        : Optional.empty());
        Proposal rest = new Proposal(Optional.empty(), Optional.empty(), lambda);
        return timed.map(state ->
                        view.timing().orElseThrow().with(rest, state.next().best()))
                .orElse(rest);
    }

    /** After knock with another fuel or other parts, a configuration starts low, whatever its first pull was. */
    private boolean isAboveRestart(MeasuredPull pull) {
        Optional<Axis> axis = view.timing();
        if (axis.isEmpty() || axis.get().of(pull).isEmpty()) {
            return false;
        }
        double restart = StartOfDay.advance(view, axis.get());
        return restart < axis.get().start()
                && axis.get().of(pull).getAsDouble() > restart + axis.get().sameSetting();
    }

    private boolean needsBaseline(List<MeasuredPull> sweep) {
        if (sweep.size() == 1 && isAboveRestart(sweep.get(0))) {
            return true;
        }
        boolean scatterKnown =
                view.day().experience().flatMap(Experience::scatter).isPresent()
                        || view.day().repeatability().scatter().isPresent();
        return sweep.size() == 1 && !scatterKnown;
    }

    /** The start setting, or the one pull so far remade; a setting at which anything was met is never remade. */
    private Optional<Draft> baseline(List<MeasuredPull> sweep) {
        if (sweep.size() == 1
                && view.isClean(sweep.get(0))
                && view.isInPlan(sweep.get(0))
                && !isAboveRestart(sweep.get(0))) {
            Proposal again = settingOf(sweep.get(0));
            return Optional.of(
                    new Draft(Action.REPEAT, AdviceCode.REPEAT_BASELINE, again, new Reason.Baseline(1, BASELINES)));
        }
        return StartOfDay.of(view)
                .map(start -> new Draft(Action.PULL, AdviceCode.BASELINE, start, new Reason.Baseline(0, BASELINES)));
    }

    private Proposal settingOf(MeasuredPull pull) {
        Optional<Lambda> lambda = view.mixture().isPresent()
                ? pull.setting().askedLambda().or(() -> pull.setting().lambda()).map(this::rounded)
                : Optional.empty();
        Proposal rest = new Proposal(Optional.empty(), Optional.empty(), lambda);
        return view.timing()
                .filter(axis -> axis.of(pull).isPresent())
                .map(axis -> axis.with(rest, axis.again(axis.of(pull).getAsDouble())))
                .orElse(rest);
    }

    private Lambda rounded(Lambda lambda) {
        Axis axis = view.mixture().orElseThrow();
        return Lambda.of(axis.again(lambda.value()));
    }

    private Draft startMixture(OptionalDouble advance, OptionalDouble best, double start) {
        if (advance.isEmpty()) {
            Proposal setting = mixtureOnly(start);
            return new Draft(Action.PULL, AdviceCode.BASELINE, setting, new Reason.Baseline(0, BASELINES));
        }
        return new Draft(
                Action.PULL, AdviceCode.START_MIXTURE, mixtureSetting(advance, start), backedOff(advance, best));
    }

    private static Reason backedOff(OptionalDouble advance, OptionalDouble best) {
        if (advance.isEmpty() || best.isEmpty()) {
            return new Reason.RichFirst();
        }
        return new Reason.BackedOff(best.getAsDouble() - advance.getAsDouble(), best.getAsDouble());
    }

    private Draft mixtureDraft(SweepState state, OptionalDouble advance) {
        SweepStep.Pull pull = (SweepStep.Pull) state.next();
        return new Draft(
                pull.isRepeat() ? Action.REPEAT : Action.PULL,
                switch (pull.why()) {
                    case CLIMB -> AdviceCode.CLIMB_MIXTURE;
                    case BRACKET -> AdviceCode.BRACKET_MIXTURE;
                    case REPEAT -> AdviceCode.REPEAT_SETTING;
                    case DOUBT -> AdviceCode.REPEAT_DOUBTFUL;
                },
                mixtureSetting(advance, pull.setting()),
                searching(state));
    }

    private Draft sweepDraft(SweepState state, boolean check) {
        SweepStep.Pull pull = (SweepStep.Pull) state.next();
        AdviceCode code = switch (pull.why()) {
            case CLIMB -> check ? AdviceCode.CHECK_TIMING : AdviceCode.CLIMB_TIMING;
            case BRACKET -> check ? AdviceCode.CHECK_TIMING : AdviceCode.BRACKET_TIMING;
            case REPEAT -> AdviceCode.REPEAT_SETTING;
            case DOUBT -> AdviceCode.REPEAT_DOUBTFUL;
        };
        OptionalDouble lambda = check ? lambdaOf(state) : sweepMixture;
        Proposal rest = view.mixture().isPresent() && lambda.isPresent()
                ? mixtureOnly(lambda.getAsDouble())
                : new Proposal(Optional.empty(), Optional.empty(), Optional.empty());
        return new Draft(
                pull.isRepeat() ? Action.REPEAT : Action.PULL,
                code,
                view.timing().orElseThrow().with(rest, pull.setting()),
                searching(state));
    }

    private OptionalDouble lambdaOf(SweepState state) {
        return view.used().stream()
                .filter(pull -> state.answer().pulls().contains(pull.number()))
                .map(DayView::mixtureOf)
                .flatMap(lambda -> lambda.stream().boxed())
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    private Reason searching(SweepState state) {
        boolean listen = state.factor() == Factor.TIMING
                && view.used().stream()
                        .reduce((first, second) -> second)
                        .map(last -> !last.knock().isMeasured())
                        .orElse(false);
        return new Reason.Searching(state.factor(), state.evidence(), listen);
    }

    private Proposal mixtureSetting(OptionalDouble advance, double lambda) {
        Proposal rest = mixtureOnly(lambda);
        return advance.isPresent() ? view.timing().orElseThrow().with(rest, advance.getAsDouble()) : rest;
    }

    private Proposal mixtureOnly(double lambda) {
        Axis axis = view.mixture().orElseThrow();
        double rounded = axis.again(lambda);
        return new Proposal(Optional.empty(), Optional.empty(), Optional.of(Lambda.of(rounded)));
    }
}
