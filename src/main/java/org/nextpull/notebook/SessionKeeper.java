package org.nextpull.notebook;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.nextpull.advice.PresentConditions;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.ResultTable;
import org.nextpull.fit.Experience;
import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Candidate;
import org.nextpull.scatter.Repeatability;
import org.nextpull.scatter.Scatter;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;
import org.nextpull.unit.Temperature;

/** Writes one session. */
final class SessionKeeper {
    private final Database database;
    private final long session;
    private final CandidateRows candidates;

    SessionKeeper(Database database, long session) {
        this.database = database;
        this.session = session;
        this.candidates = new CandidateRows(database, session);
    }

    static long begin(Database database, SessionStart start) throws NotebookException {
        SweepPlan plan = start.plan()
                .value()
                .orElseThrow(() -> new IllegalArgumentException("a session begins on a plan that can be read"));
        EngineFacts engine = plan.engine();
        return InsertRow.into("session")
                .put("started", start.started())
                .put("version", start.version())
                .put("plan_name", start.planName())
                .put("plan_text", start.planText())
                .put("engine", engine.name())
                .put("induction", engine.induction())
                .put("displacement_m3", engine.displacementM3())
                .put("cylinders", engine.cylinders())
                .put("fuel", plan.fuel().blend())
                .put("capture", start.capture())
                .insert(database);
    }

    /** Brings the session up to a result, in one transaction. */
    void keep(Instant at, SessionInput input, SessionResult result) throws IOException {
        boolean done = false;
        try {
            database.inTransaction(() -> {
                requireSession();
                day(input, result);
                SettingRows.replace(database, session, input.settings());
                sources(result);
                new PullRows(database, session).replace(at, result.measured());
                PastDays.teach(database, session, result);
                if (result.verdict().isPresent()) {
                    new AdviceRows(database, session)
                            .add(at, result.measured().size(), result.verdict().get());
                }
                return result;
            });
            done = true;
        } finally {
            if (!done) {
                candidates.forget();
            }
        }
    }

    private void requireSession() throws IOException {
        if (database.first("select id from session where id = ?", row -> row.wide("id"), session)
                .isEmpty()) {
            throw NotebookException.noSession(database.file(), session);
        }
    }

    private void day(SessionInput input, SessionResult result) throws NotebookException {
        PresentConditions now = input.now();
        Optional<Scatter> scatter = result.repeatability().scatter();
        Optional<Repeatability.Drift> drift = result.repeatability().drift();
        database.run(
                "update session set coolant_k = ?, oil_k = ?, inlet_air_k = ?, exhaust_k = ?, scatter_percent = ?,"
                        + " scatter_df = ?, drift_percent_per_pull = ?, drift_error = ?,"
                        + " acts_kept = (select count(*) from act a where a.session = session.id) where id = ?",
                now.coolant().map(Temperature::kelvins),
                now.oil().map(Temperature::kelvins),
                now.inletAir().map(Temperature::kelvins),
                now.exhaust().map(Temperature::kelvins),
                scatter.map(Scatter::percent),
                scatter.map(Scatter::degreesOfFreedom),
                drift.map(Repeatability.Drift::percentPerPull),
                drift.map(Repeatability.Drift::standardError),
                session);
        database.run("delete from experience where session = ?", session);
        if (input.experience().isPresent()) {
            experience(input.experience().get());
        }
        FindingRows findings = new FindingRows(database, session);
        findings.replace(FindingRows.Owner.of(FindingRows.Kind.DAY), result.findings());
        findings.replace(
                FindingRows.Owner.of(FindingRows.Kind.VERDICT),
                result.verdict().map(Verdict::findings).orElse(List.of()));
    }

    private void experience(Experience known) throws NotebookException {
        InsertRow.into("experience")
                .put("session", session)
                .put("days", known.days())
                .put("knowledge", KnowledgeText.of(known.knowledge()))
                .insert(database);
    }

    private void sources(SessionResult result) throws NotebookException {
        SourceRows rows = new SourceRows(database, session);
        FindingRows findings = new FindingRows(database, session);
        int position = 0;
        rows.clear(result.sources().size() + result.tables().size());
        findings.clear(FindingRows.Kind.SOURCE);
        for (SourcePulls source : result.sources()) {
            rows.write(position, source);
            findings.replace(new FindingRows.Owner(FindingRows.Kind.SOURCE, position, 0), source.findings());
            for (Candidate candidate : source.candidates()) {
                candidates.write(position, candidate);
            }
            position++;
        }
        for (ResultTable table : result.tables()) {
            rows.write(position++, table);
        }
    }

    void act(Instant at, OperatorAction act) throws IOException {
        database.inTransaction(() -> {
            requireSession();
            new ActRows(database, session).add(at, act);
            return act;
        });
    }

    void close(Instant at) throws IOException {
        database.inTransaction(() -> {
            requireSession();
            return database.run("update session set closed = ? where id = ?", at, session);
        });
    }
}
