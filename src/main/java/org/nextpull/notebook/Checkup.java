package org.nextpull.notebook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * What a check of a notebook found.
 *
 * @param sessions sessions that were made again
 * @param pulls pulls whose figures were compared
 * @param findings damage, and figures that come out otherwise now than they were kept; empty when all is well
 */
public record Checkup(int sessions, int pulls, List<Finding> findings) {
    private static final int MOST_NAMED = 20;

    public Checkup {
        findings = List.copyOf(findings);
    }

    static Checkup of(Database database) throws IOException {
        Place place = Place.inFile(database.file().toString());
        List<Finding> findings = new ArrayList<>();
        damage(database).stream()
                .limit(MOST_NAMED)
                .map(fault -> Finding.error(FindingCode.NOTEBOOK_DAMAGED, place, Detail.of("why", fault)))
                .forEach(findings::add);
        database.list("pragma foreign_key_check", row -> row.text("table")).stream()
                .distinct()
                .map(table -> Finding.error(
                        FindingCode.NOTEBOOK_DAMAGED,
                        place,
                        Detail.of("why", "rows of " + table + " belong to nothing")))
                .forEach(findings::add);
        int sessions = 0;
        int pulls = 0;
        for (SessionSummary summary : new Summaries(database).all()) {
            try {
                KeptSession kept = database.inOneView(() -> new SessionReader(database, summary).readAsFigured());
                findings.addAll(Differences.of(kept, place));
                sessions++;
                pulls += kept.pulls().size();
            } catch (NotebookException damaged) {
                findings.add(damaged.finding());
            }
        }
        return new Checkup(sessions, pulls, findings);
    }

    /** What SQLite's own check says; empty when it is content. */
    static List<String> damage(Database database) throws IOException {
        return database.list("pragma integrity_check", row -> row.text("integrity_check")).stream()
                .filter(line -> !line.equals("ok"))
                .toList();
    }

    /** Whether nothing was found. */
    public boolean isGood() {
        return findings.isEmpty();
    }
}
