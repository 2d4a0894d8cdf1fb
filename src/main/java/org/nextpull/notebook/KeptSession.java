package org.nextpull.notebook;

import java.util.List;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;

/**
 * A session out of the notebook. {@code Session.evaluate(input, sources)} gives its result again.
 *
 * @param summary what a list says of it
 * @param start what was known when it began
 * @param input what its result is made from, with all that was done by hand; without recordings
 * @param sources its logs or wires with their pulls and samples
 * @param acts what the operator did, in order of time
 * @param pulls the pulls with the figures that were made at the time
 * @param advice what was advised at the time
 */
public record KeptSession(
        SessionSummary summary,
        SessionStart start,
        SessionInput input,
        List<SourcePulls> sources,
        List<KeptAct> acts,
        List<KeptPull> pulls,
        List<KeptAdvice> advice) {
    public KeptSession {
        sources = List.copyOf(sources);
        acts = List.copyOf(acts);
        pulls = List.copyOf(pulls);
        advice = List.copyOf(advice);
    }

    /** The result again, by the one chain that makes results. */
    public SessionResult result() {
        return Session.evaluate(input, sources);
    }

    public long id() {
        return summary.id();
    }
}
