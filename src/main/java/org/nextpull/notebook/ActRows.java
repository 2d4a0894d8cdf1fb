package org.nextpull.notebook;

import java.io.IOException;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;
import org.nextpull.session.Act;
import org.nextpull.session.ActLine;

/** What the operator did, as lines, with the free words beside them for searching. */
final class ActRows {
    private final Database database;
    private final long session;

    ActRows(Database database, long session) {
        this.database = database;
        this.session = session;
    }

    void add(Instant at, Act act) throws NotebookException {
        database.run(
                "insert into act (session, position, at, pulls, line, words) values (?,"
                        + " (select count(*) from act where session = ?), ?,"
                        + " (select count(*) from pull where session = ?), ?, ?)",
                session,
                session,
                at,
                session,
                ActLine.write(act),
                words(act));
    }

    private static Optional<String> words(Act act) {
        if (act instanceof Act.Strike strike) {
            return Optional.of(strike.why());
        }
        if (act instanceof Act.Lift lift) {
            return Optional.of(lift.why());
        }
        if (act instanceof Act.Note note) {
            return Optional.of(note.text());
        }
        return act instanceof Act.Correct correct ? correct.setting().note() : Optional.empty();
    }

    List<KeptAct> read() throws IOException {
        return database.list("select * from act where session = ? order by position", this::act, session);
    }

    private KeptAct act(Row row) throws SQLException, NotebookException {
        String line = row.text("line");
        Act act = ActLine.read(line)
                .orElseThrow(() ->
                        Trouble.because(FindingCode.NOTEBOOK_STRANGE_VALUE, database.file(), Detail.of("why", line)));
        return new KeptAct(Instant.parse(row.text("at")), row.integer("pulls"), act);
    }
}
