package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.CandidatePlan;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredCurve;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.PullStatus;

/**
 * Pulls of a day of candidates: each belongs to one, by its label or else to that of the pull before, and runs on its fuel. The first
 * pull after a change flushes the line: it counts for nothing, but its knock and limits stay.
 */
final class CandidatePulls {
    private CandidatePulls() {}

    /** The pulls in their order, as the plan's candidates make them; unchanged where it has none. */
    static List<MeasuredCurve> of(SweepPlan plan, List<MeasuredCurve> measured) {
        if (!plan.decides()) {
            return measured;
        }
        List<MeasuredCurve> pulls = new ArrayList<>();
        String fitted = plan.candidates().get(0).label();
        boolean flushed = true;
        for (MeasuredCurve one : measured) {
            String label = one.pull().setting().label().orElse(fitted);
            flushed &= label.equals(fitted);
            fitted = label;
            MeasuredPull pull = known(plan, one.pull().withLabel(label));
            if (!flushed && pull.isPull()) {
                pull = pull.isUsed() ? flushing(pull, label) : pull;
                flushed = true;
            }
            pulls.add(one.withPull(pull));
        }
        return List.copyOf(pulls);
    }

    private static MeasuredPull known(SweepPlan plan, MeasuredPull pull) {
        Optional<CandidatePlan> candidate = pull.setting().label().flatMap(plan::candidate);
        if (candidate.isEmpty()) {
            return pull.withFinding(Finding.warning(
                    FindingCode.CANDIDATE_UNKNOWN,
                    place(pull),
                    Detail.of("label", pull.setting().label().orElse(""))));
        }
        return candidate.get().fuel().map(pull::withFuel).orElse(pull);
    }

    private static MeasuredPull flushing(MeasuredPull pull, String label) {
        return pull.withStanding(PullStatus.THROWN_AWAY)
                .withFinding(Finding.note(FindingCode.PULL_FLUSHES, place(pull), Detail.of("label", label)));
    }

    private static Place place(MeasuredPull pull) {
        return Place.inFile(pull.origin().source()).withPull(pull.number());
    }
}
