package org.nextpull.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.unit.SpeedBand;

/** Makes drafts of stepped pulls: plateaus one above or below the other. */
record StepSearch(SpeedTrace trace, List<SpeedTrace.Points> plateaus, Settling settling, PullRules rules) {
    private static final double EDGE_RPM = 50;
    private static final double ROUNDING_S = 0.1;

    List<CandidateDraft> drafts() {
        List<CandidateDraft> drafts = new ArrayList<>();
        int first = 0;
        while (first < plateaus.size() - 1) {
            boolean up = isUp(first);
            int last = first + 1;
            while (last < plateaus.size() - 1 && isUp(last) == up) {
                last++;
            }
            drafts.add(draft(plateaus.subList(first, last + 1), up));
            first = last;
        }
        return drafts;
    }

    private boolean isUp(int plateau) {
        return plateaus.get(plateau + 1).meanRpm(trace) > plateaus.get(plateau).meanRpm(trace);
    }

    private CandidateDraft draft(List<SpeedTrace.Points> steps, boolean up) {
        List<SpeedTrace.Points> settled = steps.stream()
                .map(step -> settled(settling, trace, step, rules.pulls().settleS()))
                .toList();
        return new CandidateDraft(
                up ? Candidate.Kind.STEPS_UP : Candidate.Kind.STEPS_DOWN, settled, objection(steps, up));
    }

    /** A plateau without its settling; at least half of it is kept. */
    static SpeedTrace.Points settled(Settling settling, SpeedTrace trace, SpeedTrace.Points plateau, double settleS) {
        double most = Math.min(settleS, plateau.durationS(trace) / 2);
        return new SpeedTrace.Points(Math.min(settling.settledAt(plateau, most), plateau.last()), plateau.last());
    }

    private Optional<CandidateDraft.Objection> objection(List<SpeedTrace.Points> steps, boolean up) {
        double hold = rules.pulls().holdS();
        for (SpeedTrace.Points step : steps) {
            if (step.durationS(trace) < hold - ROUNDING_S) {
                return Optional.of(CandidateDraft.Objection.heldTooShort(step.durationS(trace), hold));
            }
        }
        return rules.band().flatMap(band -> missesBand(band, steps, up));
    }

    private Optional<CandidateDraft.Objection> missesBand(SpeedBand band, List<SpeedTrace.Points> steps, boolean up) {
        double from = steps.get(0).meanRpm(trace);
        double to = steps.get(steps.size() - 1).meanRpm(trace);
        boolean spans =
                Math.min(from, to) <= band.fromRpm() + EDGE_RPM && Math.max(from, to) >= band.toRpm() - EDGE_RPM;
        if (spans) {
            return Optional.empty();
        }
        boolean beginsWell = up ? from <= band.fromRpm() + EDGE_RPM : from >= band.toRpm() - EDGE_RPM;
        if (beginsWell) {
            return Optional.of(CandidateDraft.Objection.of(
                    Refusal.Reason.CUT_SHORT,
                    Detail.of("rpm", to),
                    Detail.of("want", up ? band.toRpm() : band.fromRpm())));
        }
        return Optional.of(CandidateDraft.Objection.outside(band, from, to));
    }
}
