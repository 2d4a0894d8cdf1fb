package org.nextpull.notebook;

import java.io.IOException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/** Findings of a session, each with what it belongs to. */
record FindingRows(Database database, long session) {
    /** What a finding belongs to. */
    enum Kind {
        DAY,
        SOURCE,
        CANDIDATE,
        REFUSAL,
        PULL,
        VERDICT
    }

    /**
     * One owner.
     *
     * @param source position of the source among the session's; 0 where there is none
     * @param number number of the candidate or pull; 0 where there is none
     */
    record Owner(Kind kind, int source, int number) {
        static Owner of(Kind kind) {
            return new Owner(kind, 0, 0);
        }
    }

    void replace(Owner owner, List<Finding> findings) throws NotebookException {
        database.run(
                "delete from finding where session = ? and owner = ? and source = ? and number = ?",
                session,
                owner.kind(),
                owner.source(),
                owner.number());
        for (Finding finding : findings) {
            write(owner, finding);
        }
    }

    /** Forgets all findings of a kind. */
    void clear(Kind kind) throws NotebookException {
        database.run("delete from finding where session = ? and owner = ?", session, kind);
    }

    private void write(Owner owner, Finding finding) throws NotebookException {
        Place place = finding.place();
        long id = InsertRow.into("finding")
                .put("session", session)
                .put("owner", owner.kind())
                .put("source", owner.source())
                .put("number", owner.number())
                .put("code", finding.code().id())
                .put("severity", finding.severity())
                .put("file", place.file())
                .put("line", place.line())
                .put("column_number", place.column())
                .put("plan_key", place.key())
                .put("pull", place.pull())
                .insert(database);
        int position = 0;
        for (Detail detail : finding.details()) {
            InsertRow entry = InsertRow.into("finding_detail")
                    .put("finding", id)
                    .put("position", position++)
                    .put("name", detail.name());
            if (detail instanceof Detail.Text text) {
                entry.put("words", text.text());
            } else if (detail instanceof Detail.Amount amount) {
                entry.put("number", amount.number());
            }
            entry.insert(database);
        }
    }

    /** All of the session, by owner, in the order in which they were written. */
    Map<Owner, List<Finding>> read() throws IOException {
        Map<Long, List<Detail>> details = new HashMap<>();
        database.list(
                "select d.* from finding_detail d join finding f on f.id = d.finding where f.session = ?"
                        + " order by d.finding, d.position",
                row -> details.computeIfAbsent(row.wide("finding"), id -> new ArrayList<>())
                        .add(detail(row)),
                session);
        Map<Owner, List<Finding>> findings = new LinkedHashMap<>();
        database.list(
                "select * from finding where session = ? order by id",
                row -> findings.computeIfAbsent(owner(row), owner -> new ArrayList<>())
                        .add(finding(row, details.getOrDefault(row.wide("id"), List.of()))),
                session);
        return findings;
    }

    private static Owner owner(QueryRow row) throws SQLException {
        return new Owner(row.constant(Kind.class, "owner"), row.integer("source"), row.integer("number"));
    }

    private static Detail detail(QueryRow row) throws SQLException {
        Optional<String> words = row.find("words");
        return words.isPresent()
                ? Detail.of(row.text("name"), words.get())
                : Detail.of(row.text("name"), row.real("number"));
    }

    private static Finding finding(QueryRow row, List<Detail> details) throws SQLException {
        Optional<String> line = row.find("line");
        OptionalInt column = row.findInteger("column_number");
        Place place = new Place(
                row.find("file"),
                line.isPresent() ? OptionalLong.of(row.wide("line")) : OptionalLong.empty(),
                column,
                row.find("plan_key"),
                row.findInteger("pull"));
        return new Finding(
                row.constant(FindingCode.class, "code"),
                row.constant(Finding.Severity.class, "severity"),
                details,
                place);
    }
}
