package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.PullOutlook;
import org.nextpull.fit.RowCaps;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.unit.Lambda;

/** Spark and mixture moved together: the lambda to aim at, and the pull that leaves least torque to the decision after it. */
final class MixtureSearch {
    private static final double[] FROM_TARGET_HUNDREDTHS = {-5, -3.5, -2, -1, 0, 1, 2, 3};
    /** A climb goes no leaner than this beyond the best so far: then both sides of it are seen. */
    private static final double CLIMB_BEYOND_HUNDREDTHS = 3;

    private static final double[] SHIFTS_DEG = {-8, -6.5, -5, -3.5, -2, -0.5, 1};
    private static final double HUNDREDTHS = 100;
    private static final double ROUNDING = 1e-9;
    private static final double DIGITS = 1e9;
    static final double NEAR_LAMBDA = 0.0101;

    private final PlannerView.Day day;
    private final Optional<PlannerRules.Mixture> rules;
    private final PullOutlook outlook;

    MixtureSearch(PlannerView.Day day, Optional<PlannerRules.Mixture> rules) {
        this.day = day;
        this.rules = rules;
        outlook = new PullOutlook(day.posterior());
    }

    /** A pull to run. */
    record Found(SparkMap map, Lambda lambda) {}

    /** Best lambda that may be run next, rounded toward rich; empty where the mixture is not swept. */
    Optional<Lambda> target() {
        return rules.flatMap(there ->
                day.posterior().meanBestLambda().map(best -> rounded(there, Math.min(best.value(), leanest(there)))));
    }

    boolean isNear(TriedPull pull, TriedPull other) {
        return pull.lambda().isPresent()
                && other.lambda().isPresent()
                && Math.abs(pull.lambda().get().value() - other.lambda().get().value()) <= NEAR_LAMBDA;
    }

    private static Lambda rounded(PlannerRules.Mixture there, double lambda) {
        double steps = Math.floor(lambda / there.resolution() + ROUNDING);
        double set = Math.rint(steps * there.resolution() * DIGITS) / DIGITS;
        return Lambda.of(Math.max(there.richest().value(), set));
    }

    /**
     * Lambda of a pull that climbs: leaner each time by as much as gives up no advance, since to come back richer costs nothing while
     * to go leaner afterwards does. Empty where the mixture is not swept.
     */
    Optional<Lambda> climbing() {
        return rules.flatMap(there -> target().map(aimed -> rounded(
                there,
                Math.min(
                        leanest(there),
                        Math.min(
                                leanestClean(there) + Exclusions.FREE_HUNDREDTHS / HUNDREDTHS,
                                aimed.value() + CLIMB_BEYOND_HUNDREDTHS / HUNDREDTHS)))));
    }

    /** Leanest that the next pull may be: a step from the leanest clean pull, and no leaner than the plan. */
    private double leanest(PlannerRules.Mixture there) {
        return leanestAfter(there, Optional.empty());
    }

    private double leanestAfter(PlannerRules.Mixture there, Optional<Lambda> next) {
        double clean = leanestClean(there);
        double from = Math.max(clean, next.map(Lambda::value).orElse(clean));
        return Math.min(there.leanest().value(), from + there.largestStep());
    }

    /** Leanest clean pull; where there is none, so far richer than all that a step from it goes no further. */
    private double leanestClean(PlannerRules.Mixture there) {
        double clean = Double.NEGATIVE_INFINITY;
        double richest = Double.POSITIVE_INFINITY;
        for (TriedPull pull : day.pulls()) {
            if (pull.lambda().isPresent()) {
                double lambda = pull.lambda().get().value();
                richest = Math.min(richest, lambda);
                clean = pull.isClean() ? Math.max(clean, lambda) : clean;
            }
        }
        return clean > Double.NEGATIVE_INFINITY ? clean : richest - there.largestStep();
    }

    /** The pull that leaves least after it. */
    Found best(PlannerView target) {
        PlannerRules.Mixture there = rules.orElseThrow();
        List<Lambda> lambdas = new ArrayList<>();
        double aimed = target().orElseThrow().value();
        for (double away : FROM_TARGET_HUNDREDTHS) {
            double lambda = Math.min(aimed + away / HUNDREDTHS, leanest(there));
            add(lambdas, rounded(there, Math.max(lambda, there.richest().value())));
        }
        add(lambdas, rounded(there, leanest(there)));
        double least = Double.POSITIVE_INFINITY;
        Optional<Found> found = Optional.empty();
        for (Lambda lambda : lambdas) {
            PlannerView view = new PlannerView(day, Optional.of(lambda));
            for (double shift : shifts()) {
                SparkMap map = view.shifted(shift);
                double left = leftAfter(target, map, Optional.of(lambda));
                if (left < least && view.isWithinPlan(map)) {
                    least = left;
                    found = Optional.of(new Found(map, lambda));
                }
            }
        }
        return found.orElseGet(() -> new Found(target.allowed(target.best), target().orElseThrow()));
    }

    /**
     * Whether a day still climbs: with a mixture only where the spark is set, and until knock is heard, which leaner comes sooner and
     * then forbids everywhere.
     */
    boolean climbs() {
        return rules.isEmpty()
                || (!isSparkStanding()
                        && day.pulls().stream().allMatch(pull -> pull.flags().isEmpty()));
    }

    private boolean isSparkStanding() {
        return day.rules().leastDeg() == day.rules().mostDeg();
    }

    /** None where the spark stands. */
    private double[] shifts() {
        return isSparkStanding() ? new double[1] : SHIFTS_DEG;
    }

    /** Whether the plan, or a limit that was met, keeps the mixture richer than its best. */
    boolean isHeldRich() {
        return rules.isPresent()
                && day.posterior()
                        .meanBestLambda()
                        .filter(best -> best.value()
                                > rules.get().leanest().value() + rules.get().resolution())
                        .isPresent();
    }

    private static void add(List<Lambda> lambdas, Lambda lambda) {
        if (lambdas.stream().noneMatch(other -> Math.abs(other.value() - lambda.value()) < ROUNDING)) {
            lambdas.add(lambda);
        }
    }

    /** Expected torque left at the target after a pull, percent. */
    double leftAfter(PlannerView target, SparkMap map, Optional<Lambda> lambda) {
        SurfacePosterior posterior = day.posterior();
        double[] reach = new double[target.rows.length];
        for (int r = 0; r < reach.length; r++) {
            reach[r] = Math.max(target.limit.mostAdvancedClean(target.rows[r]), map.degAt(target.rows[r]));
        }
        Optional<PullOutlook.NextMixture> mixture = posterior
                .surface()
                .priors()
                .mixture()
                .flatMap(prior -> rules.flatMap(there -> lambda.map(run -> new PullOutlook.NextMixture(
                        prior.hundredths(run), prior.hundredths(Lambda.of(leanestAfter(there, lambda)))))));
        return outlook.leftAfter(new PullOutlook.NextPull(map, RowCaps.ofDeg(reach), mixture), target.lossCaps);
    }
}
