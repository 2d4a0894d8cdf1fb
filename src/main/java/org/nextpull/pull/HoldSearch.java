package org.nextpull.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/** Makes drafts of holds: one speed held while the spark is stepped; each level of the spark is a point of its own. */
record HoldSearch(Samples samples, SpeedTrace trace, Settling settling, PullRules rules) {
    /** The spark is set anew when it stands off its level by more than this for some rows, degrees. */
    private static final double STEP_DEG = 0.4;

    private static final int STEP_ROWS = 3;
    private static final double LEAST_S = 0.5;
    private static final double ROUNDING_S = 0.1;
    private static final double EDGE_RPM = 50;

    List<CandidateDraft> drafts(List<SpeedTrace.Points> plateaus) {
        List<CandidateDraft> drafts = new ArrayList<>();
        for (SpeedTrace.Points plateau : plateaus) {
            for (SpeedTrace.Points level : levels(plateau)) {
                drafts.add(new CandidateDraft(
                        Candidate.Kind.HOLD,
                        List.of(StepSearch.settled(
                                settling, trace, level, rules.pulls().settleS())),
                        objection(level)));
            }
        }
        return drafts;
    }

    /** The parts of a plateau with one spark setting each; the whole plateau where no spark is logged. */
    List<SpeedTrace.Points> levels(SpeedTrace.Points plateau) {
        Optional<Channel> spark = spark();
        if (spark.isEmpty()) {
            return List.of(plateau);
        }
        List<SpeedTrace.Points> levels = new ArrayList<>();
        int start = plateau.first();
        int off = 0;
        int offSince = start;
        double sum = 0;
        int count = 0;
        for (int point = plateau.first(); point <= plateau.last(); point++) {
            if (!samples.isPresent(spark.get(), trace.row(point))) {
                continue;
            }
            double degrees = samples.value(spark.get(), trace.row(point));
            if (count == 0 || Math.abs(degrees - sum / count) <= STEP_DEG) {
                sum += degrees;
                count++;
                off = 0;
                continue;
            }
            offSince = off == 0 ? point : offSince;
            off++;
            if (off == STEP_ROWS) {
                addIfLong(start, offSince - 1, levels);
                start = offSince;
                sum = degrees;
                count = 1;
                off = 0;
            }
        }
        addIfLong(start, plateau.last(), levels);
        return levels;
    }

    private Optional<Channel> spark() {
        return List.of(Channel.of(Role.ADVANCE), Channel.of(Role.ADVANCE_OFFSET)).stream()
                .filter(samples::has)
                .findFirst();
    }

    private void addIfLong(int first, int last, List<SpeedTrace.Points> levels) {
        if (last > first && trace.durationS(first, last) >= LEAST_S) {
            levels.add(new SpeedTrace.Points(first, last));
        }
    }

    private Optional<CandidateDraft.Objection> objection(SpeedTrace.Points level) {
        double hold = rules.pulls().holdS();
        if (level.durationS(trace) < hold - ROUNDING_S) {
            return Optional.of(CandidateDraft.Objection.heldTooShort(level.durationS(trace), hold));
        }
        double rpm = level.meanRpm(trace);
        return rules.band()
                .filter(band -> rpm < band.fromRpm() - EDGE_RPM || rpm > band.toRpm() + EDGE_RPM)
                .map(band -> CandidateDraft.Objection.outside(band, rpm, rpm));
    }
}
