package org.nextpull.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;

/**
 * The setting to leave while the sweeps go on: the clean pull that read highest, never one beyond what was run, outside the plan,
 * forbidden, or leaner than the peak where that is known.
 */
final class BestSoFar {
    private BestSoFar() {}

    /** The setting; empty when nothing was run, or when what is forbidden leaves nothing. */
    static Optional<Chosen> of(DayView view, Outlook outlook) {
        List<MeasuredPull> clean = view.used().stream()
                .filter(view::isClean)
                .filter(view::isInPlan)
                .filter(pull -> !view.isForbidden(pull))
                .toList();
        List<MeasuredPull> notLean = clean.stream()
                .filter(pull -> !isLeanOfPeak(pull, outlook.mixture()))
                .toList();
        List<MeasuredPull> eligible = notLean.isEmpty() ? clean : notLean;
        Optional<Integer> best = Reading.of(eligible, view.day().plan().goal().response()).stream()
                .max(Comparator.comparingDouble(Reading::value))
                .map(Reading::pull);
        return best.flatMap(number -> eligible.stream()
                        .filter(pull -> pull.number() == number)
                        .findFirst())
                .map(pull -> chosen(view, pull, new Outcome(outlook, clean.size())))
                .or(() -> retreat(view, outlook));
    }

    /** A single reading is no answer once the curve has one: a bracketed timing sweep names its own best, which lies among what was run. */
    private static Chosen chosen(DayView view, MeasuredPull highest, Outcome outcome) {
        Proposal setting = settingOf(view, highest);
        Chosen.Standing standing = outcome.clean() == 1 ? Chosen.Standing.ONLY_ONE : Chosen.Standing.NOT_PROVEN;
        Chosen.Proof proof = outcome.outlook().proof(view, standing);
        return outcome.outlook()
                .timing()
                .filter(state ->
                        view.mixture().isEmpty() && state.answer().optimum().isPresent())
                .map(state -> new Chosen(
                        view.timing().orElseThrow().with(setting, state.next().best()), ChosenBy.PEAK, proof))
                .orElse(new Chosen(setting, ChosenBy.HIGHEST_TRIED, proof));
    }

    /** Where the sweeps stand, and how many clean pulls there are to choose from. */
    private record Outcome(Outlook outlook, int clean) {}

    private static boolean isLeanOfPeak(MeasuredPull pull, Optional<SweepState> mixture) {
        OptionalDouble lambda = DayView.mixtureOf(pull);
        return lambda.isPresent()
                && mixture.flatMap(state -> state.answer().optimum())
                        .map(optimum -> lambda.getAsDouble() > optimum.peak())
                        .orElse(false);
    }

    private static Proposal settingOf(DayView view, MeasuredPull pull) {
        boolean setsOffset =
                view.timing().filter(axis -> axis.kind() == Axis.Kind.OFFSET).isPresent();
        return new Proposal(
                setsOffset && pull.setting().offset().isPresent()
                        ? Optional.empty()
                        : pull.setting().advance(),
                pull.setting().offset(),
                pull.setting().askedLambda().or(() -> pull.setting().lambda()));
    }

    /** Where every pull met something: the start, made as retarded and rich as that asks. */
    private static Optional<Chosen> retreat(DayView view, Outlook outlook) {
        if (view.here().stream().allMatch(view::isClean)) {
            return Optional.empty();
        }
        ChosenBy by = view.bans().hasKnock(view.fuel()) ? ChosenBy.KNOCK_LIMIT : ChosenBy.PLAN_LIMIT;
        return StartOfDay.of(view)
                .flatMap(start -> new Gate(view).pass(start, Factor.TIMING))
                .map(start -> new Chosen(start, by, outlook.proof(view, Chosen.Standing.NOT_RUN)));
    }
}
