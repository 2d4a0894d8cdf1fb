package org.nextpull.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.nextpull.finding.Finding;
import org.nextpull.session.Replay;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;

/**
 * Plan, pulls, tables and settings of a day, read from files or from the notebook.
 *
 * @param session what the result is made from
 * @param sources the logs with their pulls
 * @param labels label of each source that was named with one
 * @param findings files that could not be used, and what is worth saying of the others
 * @param files what was read, which nothing may be written over: plan, settings, logs, tables, notebook
 */
record DayInput(
        SessionInput session,
        List<SourcePulls> sources,
        Map<String, String> labels,
        List<Finding> findings,
        List<Path> files) {
    DayInput {
        sources = List.copyOf(sources);
        labels = Map.copyOf(labels);
        findings = List.copyOf(findings);
        files = List.copyOf(files);
    }

    DayInput with(SessionInput newSession) {
        return new DayInput(newSession, sources, labels, findings, files);
    }

    /** The same with more findings. */
    DayInput with(List<Finding> more) {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(more);
        return new DayInput(session, sources, labels, all, files);
    }

    /** Whether some of the files could not be used. */
    boolean someFailed() {
        return findings.stream().anyMatch(Finding::isError);
    }

    SessionResult result() {
        return Session.evaluate(session, sources);
    }

    Replay replay() {
        return Replay.of(session, sources);
    }
}
