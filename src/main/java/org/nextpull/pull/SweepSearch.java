package org.nextpull.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes drafts of the sweeps of a stretch, up and down. */
record SweepSearch(Stretch stretch, SpeedTrace trace, List<TracePoints> plateaus, Settling settling, PullRules rules) {
    /** Less than this is no sweep at all and gets no number. */
    private static final double LEAST_RPM = 200;

    private static final double LEAST_S = 0.5;

    /** A falling leg is a sweep when it takes this long and this share of the longest leg; else the brake only goes back for the next one. */
    private static final double LEAST_FALL_S = 1.5;

    private static final double LEAST_FALL_SHARE = 1.0 / 3;

    /** The legs that count, as they move. */
    List<TracePoints> legs() {
        Legs legs = new Legs(trace);
        List<TracePoints> moving = new ArrayList<>();
        for (TracePoints leg : legs.all()) {
            moving.add(legs.moving(leg, plateaus));
        }
        double longest =
                moving.stream().mapToDouble(leg -> leg.durationS(trace)).max().orElse(0);
        return moving.stream().filter(leg -> counts(leg, longest)).toList();
    }

    private boolean counts(TracePoints leg, double longest) {
        double seconds = leg.durationS(trace);
        if (Math.abs(leg.rise(trace)) < LEAST_RPM || seconds < LEAST_S) {
            return false;
        }
        boolean rising = leg.rise(trace) > 0;
        return rising || (seconds >= LEAST_FALL_S && seconds >= LEAST_FALL_SHARE * longest);
    }

    List<FoundStretch> drafts(boolean throttleLogged) {
        List<FoundStretch> drafts = new ArrayList<>();
        for (TracePoints leg : legs()) {
            double sinceLoad = trace.timeS(leg.first()) - trace.timeS(0);
            double most = Math.max(0, rules.pulls().settleS() - sinceLoad);
            TracePoints sweep = new TracePoints(Math.min(settling.settledAt(leg, most), leg.last()), leg.last());
            PullKind kind = leg.rise(trace) > 0 ? PullKind.RISING : PullKind.FALLING;
            Optional<FoundStretch.Objection> objection =
                    new SweepCheck(trace, sweep, rules.band()).objection(endReason(leg, throttleLogged));
            drafts.add(new FoundStretch(kind, List.of(sweep), objection));
        }
        return drafts;
    }

    /** Why a leg ended, for one that ends before the band does. */
    private RefusalReason endReason(TracePoints leg, boolean throttleLogged) {
        boolean toTheEnd = trace.timeS(trace.size() - 1) - trace.timeS(leg.last()) < LEAST_S;
        if (!toTheEnd) {
            return plateaus.stream().anyMatch(plateau -> Math.abs(plateau.first() - leg.last()) <= 1)
                    ? RefusalReason.OUTSIDE_BAND
                    : RefusalReason.CUT_SHORT;
        }
        return switch (stretch.end()) {
            case UNLOADED -> throttleLogged ? RefusalReason.THROTTLE_LIFTED : RefusalReason.CUT_SHORT;
            case HOLE, LOG_ENDED, NEW_RUN, TOO_LONG, CUT -> RefusalReason.CUT_SHORT;
        };
    }
}
