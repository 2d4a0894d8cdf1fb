package org.nextpull.notebook;

import java.io.IOException;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.nextpull.pull.Candidate;
import org.nextpull.session.PullFingerprint;
import org.nextpull.session.SourcePulls;

/** Finds the sessions that hold pulls of a day, the same in every sample. */
final class SamePulls {
    private SamePulls() {}

    /** Numbers of the sessions, ascending. */
    static SortedSet<Long> sessions(Database database, List<SourcePulls> day) throws IOException {
        SortedSet<Long> sessions = new TreeSet<>();
        for (SourcePulls source : day) {
            for (Candidate candidate : source.candidates()) {
                if (candidate.samples().rows() > 0) {
                    sessions.addAll(database.list(
                            "select distinct session from candidate where fingerprint = ?",
                            row -> row.wide("session"),
                            PullFingerprint.of(candidate.samples())));
                }
            }
        }
        return sessions;
    }
}
