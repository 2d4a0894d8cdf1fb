package org.nextpull.pull;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;

/**
 * A candidate before it has a number.
 *
 * @param kind what it is
 * @param parts its parts as points of the trace, in order of time; a sweep or a hold has one
 * @param objection why it cannot be used
 */
record Draft(PullKind kind, List<Span> parts, Optional<Objection> objection) {
    /** A reason and its numbers. */
    record Objection(RefusalReason reason, List<Detail> details) {
        static Objection of(RefusalReason reason, Detail... details) {
            return new Objection(reason, List.of(details));
        }
    }

    Draft {
        parts = List.copyOf(parts);
    }

    Draft withObjection(Objection why) {
        return new Draft(kind, parts, Optional.of(why));
    }

    Span first() {
        return parts.get(0);
    }

    Span last() {
        return parts.get(parts.size() - 1);
    }
}
