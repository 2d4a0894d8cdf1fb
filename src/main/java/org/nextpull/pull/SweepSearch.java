package org.nextpull.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes drafts of the sweeps of a stretch, up and down. */
record SweepSearch(
        FullLoadStretch stretch,
        SpeedTrace trace,
        List<SpeedTrace.Points> plateaus,
        Settling settling,
        PullRules rules) {
    /** Less than this is no sweep at all and gets no number. */
    private static final double LEAST_RPM = 200;

    private static final double LEAST_S = 0.5;

    /** A falling leg is a sweep when it takes this long and this share of the longest leg; else the brake only goes back for the next one. */
    private static final double LEAST_FALL_S = 1.5;

    private static final double LEAST_FALL_SHARE = 1.0 / 3;

    /** The legs that count, as they move. */
    List<SpeedTrace.Points> legs() {
        Legs legs = new Legs(trace);
        List<SpeedTrace.Points> moving = new ArrayList<>();
        for (SpeedTrace.Points leg : legs.all()) {
            moving.add(legs.moving(leg, plateaus));
        }
        double longest =
                moving.stream().mapToDouble(leg -> leg.durationS(trace)).max().orElse(0);
        return moving.stream().filter(leg -> counts(leg, longest)).toList();
    }

    private boolean counts(SpeedTrace.Points leg, double longest) {
        double seconds = leg.durationS(trace);
        if (Math.abs(leg.rise(trace)) < LEAST_RPM || seconds < LEAST_S) {
            return false;
        }
        boolean rising = leg.rise(trace) > 0;
        return rising || (seconds >= LEAST_FALL_S && seconds >= LEAST_FALL_SHARE * longest);
    }

    List<CandidateDraft> drafts(boolean throttleLogged) {
        List<CandidateDraft> drafts = new ArrayList<>();
        for (SpeedTrace.Points leg : legs()) {
            double sinceLoad = trace.timeS(leg.first()) - trace.timeS(0);
            double most = Math.max(0, rules.pulls().settleS() - sinceLoad);
            SpeedTrace.Points sweep =
                    new SpeedTrace.Points(Math.min(settling.settledAt(leg, most), leg.last()), leg.last());
            Candidate.Kind kind = leg.rise(trace) > 0 ? Candidate.Kind.RISING : Candidate.Kind.FALLING;
            Optional<CandidateDraft.Objection> objection =
                    new SweepCheck(trace, sweep, rules.band()).objection(endReason(leg, throttleLogged));
            drafts.add(new CandidateDraft(kind, List.of(sweep), objection));
        }
        return drafts;
    }

    /** Why a leg ended, for one that ends before the band does. */
    private Refusal.Reason endReason(SpeedTrace.Points leg, boolean throttleLogged) {
        boolean toTheEnd = trace.timeS(trace.size() - 1) - trace.timeS(leg.last()) < LEAST_S;
        if (!toTheEnd) {
            return plateaus.stream().anyMatch(plateau -> Math.abs(plateau.first() - leg.last()) <= 1)
                    ? Refusal.Reason.OUTSIDE_BAND
                    : Refusal.Reason.CUT_SHORT;
        }
        return switch (stretch.end()) {
            case UNLOADED -> throttleLogged ? Refusal.Reason.THROTTLE_LIFTED : Refusal.Reason.CUT_SHORT;
            case HOLE, LOG_ENDED, NEW_RUN, TOO_LONG, CUT -> Refusal.Reason.CUT_SHORT;
        };
    }

    /**
     * Cuts a stretch where the speed turns back. Small retreats do not count as a turn: they are judged later. A turn is a retreat by more
     * than 150 rpm or a twentieth of the whole range.
     */
    private record Legs(SpeedTrace trace) {
        private static final double TURN_RPM = 150;
        private static final double TURN_SHARE = 0.05;

        /** Slower than this share of a leg's own rate the ends of a leg are no longer part of its sweep. */
        private static final double MOVING_SHARE = 0.2;

        /** The legs in order of time, each running from one turn to the next. */
        List<SpeedTrace.Points> all() {
            List<SpeedTrace.Points> legs = new ArrayList<>();
            if (trace.size() < 2) {
                return legs;
            }
            double turn = Math.max(TURN_RPM, TURN_SHARE * range());
            int start = 0;
            int low = 0;
            int high = 0;
            int direction = 0;
            for (int point = 1; point < trace.size(); point++) {
                low = trace.smoothRpm(point) < trace.smoothRpm(low) ? point : low;
                high = trace.smoothRpm(point) > trace.smoothRpm(high) ? point : high;
                double rpm = trace.smoothRpm(point);
                if (direction >= 0 && trace.smoothRpm(high) - rpm > turn) {
                    if (high > start) {
                        legs.add(new SpeedTrace.Points(start, high));
                    }
                    start = high;
                    low = point;
                    direction = -1;
                } else if (direction <= 0 && rpm - trace.smoothRpm(low) > turn) {
                    if (low > start) {
                        legs.add(new SpeedTrace.Points(start, low));
                    }
                    start = low;
                    high = point;
                    direction = 1;
                }
            }
            if (trace.size() - 1 > start) {
                legs.add(new SpeedTrace.Points(start, trace.size() - 1));
            }
            return legs;
        }

        /** The moving part of a leg: without plateaus at its ends and without ends that hardly move. */
        SpeedTrace.Points moving(SpeedTrace.Points leg, List<SpeedTrace.Points> plateaus) {
            int first = leg.first();
            int last = leg.last();
            double half = (trace.smoothRpm(first) + trace.smoothRpm(last)) / 2;
            boolean rising = leg.rise(trace) > 0;
            for (SpeedTrace.Points plateau : plateaus) {
                if (plateau.last() <= first || plateau.first() >= last) {
                    continue;
                }
                boolean atStart = plateau.meanRpm(trace) < half == rising;
                if (atStart) {
                    first = Math.max(first, Math.min(plateau.last(), last));
                } else {
                    last = Math.min(last, Math.max(plateau.first(), first));
                }
            }
            return last > first ? withoutSlowEnds(new SpeedTrace.Points(first, last)) : leg;
        }

        private SpeedTrace.Points withoutSlowEnds(SpeedTrace.Points part) {
            double slow = MOVING_SHARE * Math.abs(part.rise(trace)) / Math.max(1e-9, part.durationS(trace));
            double sign = Math.signum(part.rise(trace));
            int first = part.first();
            int last = part.last();
            while (first < last && sign * trace.rate(first) < slow) {
                first++;
            }
            while (last > first && sign * trace.rate(last) < slow) {
                last--;
            }
            return last > first ? new SpeedTrace.Points(first, last) : part;
        }

        private double range() {
            double low = trace.smoothRpm(0);
            double high = low;
            for (int point = 1; point < trace.size(); point++) {
                low = Math.min(low, trace.smoothRpm(point));
                high = Math.max(high, trace.smoothRpm(point));
            }
            return high - low;
        }
    }
}
