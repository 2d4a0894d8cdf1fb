package org.nextpull.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.advice.Verdict;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.InterimLooks;
import org.nextpull.compare.LabelScatters;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.compare.PullPlan;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.scatter.Scatter;

/**
 * The runs after the sweeps, which decide between the candidates, each at its own best.
 *
 * @param runs those that were run and used
 * @param order the label of each run that is planned, in order; empty while the sweeps go on
 * @param told what the runs tell; empty before it can be worked out
 * @param scatters of each candidate as its own sweep told it; empty while the sweeps go on
 */
record DecisionRuns(
        SweepPlan plan,
        List<MeasuredPull> runs,
        List<String> order,
        Optional<MeasuredComparison> told,
        Map<String, Scatter> scatters) {
    /** Runs in blocks that change each label with the reference so often: after fewer nobody can tell a label from a bow of the day. */
    private static final int CHANGE_OVERS = 3;

    private static final double POWER = 0.8;
    private static final double USUAL_SCATTER_PERCENT = 0.3;
    /** After the planned runs the day goes on at most so often. */
    private static final int MOST_ROUNDS = 2;

    private static final long SEED = 1;

    DecisionRuns {
        runs = List.copyOf(runs);
        order = List.copyOf(order);
        scatters = Map.copyOf(scatters);
    }

    /** While the sweeps go on. */
    static DecisionRuns none(SweepPlan plan) {
        return new DecisionRuns(plan, List.of(), List.of(), Optional.empty(), Map.of());
    }

    /**
     * The runs so far, with their plan.
     *
     * @param swept what the sweep of each candidate says, which tells the scatter among others
     * @param after the pulls after the sweeps
     */
    static DecisionRuns of(SweepPlan plan, Map<String, Verdict> swept, List<MeasuredPull> after) {
        Map<String, Scatter> scatters = new LinkedHashMap<>();
        swept.forEach((label, verdict) ->
                verdict.teaches().map(SurfaceKnowledge::scatter).ifPresent(scatter -> scatters.put(label, scatter)));
        List<MeasuredPull> runs = after.stream()
                .filter(MeasuredPull::isUsed)
                .filter(pull -> pull.setting().label().flatMap(plan::candidate).isPresent())
                .toList();
        List<String> order = new ArrayList<>(order(plan, scatters));
        if (runs.size() >= order.size()) {
            // a run of another candidate than was asked for takes no other's place
            order.addAll(missing(order, runs));
        }
        InterimLooks looks = new InterimLooks.Planned(order.size());
        Optional<MeasuredComparison> told = compared(plan, alike(runs, order.size()), looks, scatters);
        for (int round = 0; round < MOST_ROUNDS && runs.size() >= order.size(); round++) {
            Optional<ComparisonResult.FurtherPulls> further =
                    told.flatMap(found -> found.by(plan.goal().response()).further());
            if (further.isEmpty()) {
                break;
            }
            order.addAll(further.get().order());
            looks = further.get().looks();
            told = compared(plan, alike(runs, order.size()), looks, scatters);
        }
        return new DecisionRuns(plan, runs, order, told, scatters);
    }

    /** The order of least pulls for the plan's worth; it begins with what is fitted when the last sweep ends. */
    private static List<String> order(SweepPlan plan, Map<String, Scatter> scatters) {
        List<String> order = new ArrayList<>(PullPlan.decision(
                        new LabelScatters(USUAL_SCATTER_PERCENT, scatters),
                        new PullPlan.Wish(plan.goal().worthPercent(), POWER),
                        plan.candidates().stream()
                                .map(SweepPlan.Candidate::label)
                                .toList(),
                        CHANGE_OVERS)
                .order());
        Collections.reverse(order);
        return order;
    }

    /** Labels of the planned runs, in their order, that as many runs left out. */
    private static List<String> missing(List<String> order, List<MeasuredPull> runs) {
        List<String> missing = new ArrayList<>(order);
        runs.subList(0, order.size())
                .forEach(run -> missing.remove(run.setting().label().orElseThrow()));
        return missing;
    }

    /** Those of the decision runs that ran at the setting of their candidate. */
    private static List<MeasuredPull> alike(List<MeasuredPull> runs, int most) {
        return ComparedDay.LikePulls.of(runs.subList(0, Math.min(most, runs.size())))
                .pulls();
    }

    private static Optional<MeasuredComparison> compared(
            SweepPlan plan, List<MeasuredPull> runs, InterimLooks looks, Map<String, Scatter> scatters) {
        ComparisonRequest request = new ComparisonRequest(
                plan.candidates().get(0).label(), plan.goal().worthPercent(), looks, SEED, scatters);
        return MeasuredComparison.of(runs, request, plan.goal().response()).value();
    }

    /** What these runs tell together with those of earlier days. */
    Optional<MeasuredComparison> joined(List<MeasuredPull> all) {
        return compared(plan, all, new InterimLooks.Open(0), scatters);
    }

    /** The runs that the plan asked for. */
    List<MeasuredPull> planned() {
        return runs.subList(0, Math.min(order.size(), runs.size()));
    }

    private List<Comparison> gains() {
        return told.map(found -> found.by(plan.goal().response()).comparisons()).orElse(List.of());
    }

    /** Whether each candidate is told from the reference. */
    boolean isTold() {
        return told.isPresent()
                && gains().size() == plan.candidates().size() - 1
                && gains().stream().noneMatch(one -> one.verdict() == Comparison.Verdict.CANNOT_TELL);
    }

    /** Whether nothing more is to be run. */
    boolean isDecided() {
        return !order.isEmpty() && (runs.size() >= order.size() || isTold());
    }

    /** Label of the best that is proven, else of the reference. */
    String best() {
        return gains().stream()
                .filter(one -> one.verdict() == Comparison.Verdict.MORE)
                .map(Comparison::label)
                .findFirst()
                .orElse(plan.candidates().get(0).label());
    }
}
