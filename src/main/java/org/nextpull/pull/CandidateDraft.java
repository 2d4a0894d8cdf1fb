package org.nextpull.pull;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.unit.SpeedBand;

/**
 * A candidate before it has a number.
 *
 * @param kind what it is
 * @param parts its parts as points of the trace, in order of time; a sweep or a hold has one
 * @param objection why it cannot be used
 */
record CandidateDraft(Candidate.Kind kind, List<SpeedTrace.Points> parts, Optional<Objection> objection) {
    /** A reason and its numbers. */
    record Objection(Refusal.Reason reason, List<Detail> details) {
        static Objection of(Refusal.Reason reason, Detail... details) {
            return new Objection(reason, List.of(details));
        }

        /** Of a stretch from one speed to another, in rpm, that does not cover the band. */
        static Objection outside(SpeedBand band, double fromRpm, double toRpm) {
            return of(
                    Refusal.Reason.OUTSIDE_BAND,
                    Detail.of("from", fromRpm),
                    Detail.of("to", toRpm),
                    Detail.of("want_from", band.fromRpm()),
                    Detail.of("want_to", band.toRpm()));
        }

        /** Of a plateau of so many seconds where so many are wanted. */
        static Objection heldTooShort(double seconds, double wanted) {
            return of(Refusal.Reason.HOLD_TOO_SHORT, Detail.of("seconds", seconds), Detail.of("want", wanted));
        }
    }

    CandidateDraft {
        parts = List.copyOf(parts);
    }

    CandidateDraft withObjection(Objection why) {
        return new CandidateDraft(kind, parts, Optional.of(why));
    }

    SpeedTrace.Points first() {
        return parts.get(0);
    }

    SpeedTrace.Points last() {
        return parts.get(parts.size() - 1);
    }
}
