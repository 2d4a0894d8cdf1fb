package org.nextpull.notebook;

import java.io.IOException;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;
import org.nextpull.session.ActionLine;
import org.nextpull.session.OperatorAction;

/** What the operator did, as lines, with the free words beside them for searching. */
record ActRows(Database database, long session) {
    void add(Instant at, OperatorAction act) throws NotebookException {
        database.run(
                "insert into act (session, position, at, pulls, line, words) values (?,"
                        + " (select count(*) from act where session = ?), ?,"
                        + " (select count(*) from pull where session = ?), ?, ?)",
                session,
                session,
                at,
                session,
                ActionLine.write(act),
                words(act));
    }

    private static Optional<String> words(OperatorAction act) {
        if (act instanceof OperatorAction.Strike strike) {
            return Optional.of(strike.why());
        }
        if (act instanceof OperatorAction.Lift lift) {
            return Optional.of(lift.why());
        }
        if (act instanceof OperatorAction.Note note) {
            return Optional.of(note.text());
        }
        return act instanceof OperatorAction.Correct correct
                ? correct.setting().setting().note()
                : Optional.empty();
    }

    List<KeptSession.Act> read() throws IOException {
        return database.list("select * from act where session = ? order by position", this::act, session);
    }

    private KeptSession.Act act(QueryRow row) throws SQLException, NotebookException {
        String line = row.text("line");
        OperatorAction act = ActionLine.read(line)
                .orElseThrow(() -> NotebookException.because(
                        FindingCode.NOTEBOOK_STRANGE_VALUE, database.file(), Detail.of("why", line)));
        return new KeptSession.Act(Instant.parse(row.text("at")), row.integer("pulls"), act);
    }
}
