package org.nextpull.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.session.Replay;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;

/**
 * Plan, pulls, tables and settings of a day, read from files or from the notebook.
 *
 * @param session what the result is made from, with what was found on reading it
 * @param sources the logs with their pulls
 * @param labels label of each source that was named with one
 * @param kept the session of the notebook, where the day is one
 * @param files what was read, which nothing may be written over: plan, settings, logs, tables, notebook
 */
public record DayInput(
        SessionInput session,
        List<SourcePulls> sources,
        Map<String, String> labels,
        Optional<SessionSummary> kept,
        List<Path> files) {
    public DayInput {
        sources = List.copyOf(sources);
        labels = Map.copyOf(labels);
        files = List.copyOf(files);
    }

    DayInput with(SessionInput newSession) {
        return new DayInput(newSession, sources, labels, kept, files);
    }

    /** What was found before the day was worked out: files that could not be used, and what is worth saying of the others. */
    public List<Finding> findings() {
        return session.found();
    }

    /** Whether some of the files could not be used. */
    public boolean someFailed() {
        return findings().stream().anyMatch(Finding::isError);
    }

    /** The day worked out. */
    public SessionResult result() {
        return Session.evaluate(session, sources);
    }

    /** The day worked out, pull by pull. */
    public Replay replay() {
        return Replay.of(session, sources);
    }
}
