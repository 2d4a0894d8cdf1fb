package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.unit.Lambda;

/** Reads what a day says off its posterior and the planner's answer. */
final class StateReading {
    private final DayReadings day;
    private final DayEvidence evidence;
    private final PlannerDecision.Answer answer;
    private final PlannerRules.Spark rules;

    StateReading(DayReadings day, DayEvidence evidence, PlannerDecision.Answer answer, PlannerRules.Spark rules) {
        this.day = day;
        this.evidence = evidence;
        this.answer = answer;
        this.rules = rules;
    }

    MapState state(Optional<MapState.Gain> gain) {
        SurfacePosterior posterior = evidence.posterior();
        List<TriedPull> tried = evidence.pulls();
        return new MapState(
                evidence.present(),
                last(tried),
                rows(),
                knockLimits(),
                answer.peak().spark().orElseThrow(),
                answer.leftAtPeak(),
                answer.least().spark().orElseThrow(),
                answer.leftAtLeast(),
                answer.leftByLeave(),
                answer.peak().lambda(),
                gain,
                posterior.scatterPercent(),
                posterior.driftPercent(posterior.days() - 1));
    }

    /** What stood last, at the cells; of held speeds at each of them. */
    private SparkMap last(List<TriedPull> tried) {
        TriedPull last = tried.get(tried.size() - 1);
        double[] rpm = day.rows();
        if (last.isRunOver(rpm)) {
            return day.atCells(last.spark());
        }
        double[] deg = last.spark().degAt(rpm);
        for (TriedPull pull : tried) {
            for (int r = 0; r < rpm.length; r++) {
                deg[r] = pull.reached().contains(rpm[r]) ? pull.spark().degAt(rpm[r]) : deg[r];
            }
        }
        return day.atCells(SparkMap.of(rpm, deg));
    }

    private List<AnswerRow> rows() {
        return day.ignition().isMap() ? new RowReading(day, evidence, exclusions()).ofMap(answer) : List.of();
    }

    Exclusions exclusions() {
        return new Exclusions(evidence.pulls(), rules, day.rows(), day.looks(evidence.pulls()));
    }

    private List<MapState.KnockAtRow> knockLimits() {
        Optional<Lambda> lambda = answer.peak().lambda();
        double[] speeds = day.rows();
        Exclusions exclusions = exclusions();
        List<MapState.KnockAtRow> limits = new ArrayList<>();
        for (double rpm : speeds) {
            double lowest = Double.POSITIVE_INFINITY;
            int set = 0;
            for (int i = 0; i < evidence.pulls().size(); i++) {
                TriedPull pull = evidence.pulls().get(i);
                double ban = exclusions.banDeg(rpm, lambda, look -> look.pull().equals(pull));
                if (ban < lowest) {
                    lowest = ban;
                    set = day.counting().get(i).number();
                }
            }
            if (lowest < Double.POSITIVE_INFINITY) {
                limits.add(new MapState.KnockAtRow(rpm, SparkGrid.toHundredths(lowest), set));
            }
        }
        return limits;
    }
}
