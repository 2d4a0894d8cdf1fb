package org.nextpull.notebook;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.advice.PresentConditions;
import org.nextpull.channel.ResultTable;
import org.nextpull.finding.Finding;
import org.nextpull.fit.Experience;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.OperatorActions;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SourcePulls;
import org.nextpull.unit.Temperature;

/** Reads one session back. */
final class SessionReader {
    private final Database database;
    private final SessionSummary summary;
    private final long session;

    SessionReader(Database database, SessionSummary summary) {
        this.database = database;
        this.summary = summary;
        this.session = summary.id();
    }

    KeptSession read() throws IOException {
        return read(new ActRows(database, session).read());
    }

    /** The session as it stood when its figures were last kept, without what was done by hand since. */
    KeptSession readAsFigured() throws IOException {
        int count = database.first(
                        "select acts_kept from session where id = ?", row -> row.integer("acts_kept"), session)
                .orElse(0);
        return read(new ActRows(database, session).read().stream().limit(count).toList());
    }

    private KeptSession read(List<KeptSession.Act> acts) throws IOException {
        SessionStart start = start();
        SweepPlan plan = start.plan()
                .value()
                .orElseThrow(() -> NotebookException.planUnreadable(
                        database.file(), start.plan().findings()));
        List<SourcePulls> sources = new ArrayList<>();
        List<ResultTable> tables = new ArrayList<>();
        SourceRows rows = new SourceRows(database, session);
        Map<FindingRows.Owner, List<Finding>> findings = new FindingRows(database, session).read();
        CandidateRows candidates = new CandidateRows(database, session);
        for (SourceRows.Kept source : rows.read()) {
            if (source.isTable()) {
                tables.add(rows.table(source));
            } else {
                sources.add(new SourcePulls(
                        source.name(),
                        source.described(),
                        source.rows(),
                        candidates.read(source, findings),
                        rows.alarms(source.position()),
                        findings.getOrDefault(
                                new FindingRows.Owner(FindingRows.Kind.SOURCE, source.position(), 0), List.of()),
                        source.thrownAway()));
            }
        }
        SessionInput base = SessionInput.of(plan, List.of(), tables)
                .withSettings(SettingRows.read(database, session))
                .withNow(now());
        SessionInput learned = experience().map(base::withExperience).orElse(base);
        return new KeptSession(
                summary,
                start,
                done(start, acts).applied(learned),
                sources,
                acts,
                pulls(),
                new AdviceRows(database, session).read());
    }

    /** What was done by hand. A session without raw data of its own was kept from logs: nobody could be asked who watches. */
    private static OperatorActions done(SessionStart start, List<KeptSession.Act> kept) {
        List<OperatorAction> acts = new ArrayList<>();
        if (start.capture().isEmpty()) {
            acts.add(new OperatorAction.OwnWatch(List.of(Limit.values())));
        }
        kept.forEach(act -> acts.add(act.act()));
        return OperatorActions.of(acts);
    }

    private SessionStart start() throws IOException {
        return database.first(
                        "select * from session where id = ?",
                        row -> new SessionStart(
                                Instant.parse(row.text("started")),
                                row.text("version"),
                                row.text("plan_name"),
                                row.text("plan_text"),
                                row.find("capture")),
                        session)
                .orElseThrow(() -> NotebookException.noSession(database.file(), session));
    }

    private PresentConditions now() throws IOException {
        return database.first(
                        "select * from session where id = ?",
                        row -> new PresentConditions(
                                row.find("coolant_k", Temperature::ofKelvins),
                                row.find("oil_k", Temperature::ofKelvins),
                                row.find("inlet_air_k", Temperature::ofKelvins),
                                row.find("exhaust_k", Temperature::ofKelvins)),
                        session)
                .orElse(PresentConditions.unknown());
    }

    /** What it was taught; a session that was kept when a curvature alone was learned has nothing of use. */
    private Optional<Experience> experience() throws IOException {
        return database.first(
                "select * from experience where session = ? and knowledge is not null",
                row -> new Experience(KnowledgeText.read(row.text("knowledge")), row.integer("days")),
                session);
    }

    List<KeptSession.Pull> pulls() throws IOException {
        return database.list(
                "select * from pull where session = ? order by day_order, number",
                row -> new KeptSession.Pull(
                        row.integer("number"),
                        Instant.parse(row.text("kept_at")),
                        row.text("source"),
                        row.text("standing"),
                        new KeptSession.Pull.KeptSetting(
                                row.findReal("advance_deg"),
                                row.findReal("offset_deg"),
                                row.findReal("lambda"),
                                row.find("fuel"),
                                row.find("label"),
                                row.find("note")),
                        new KeptSession.Pull.KeptFigures(
                                row.real("day_order"),
                                row.findReal("mean_torque_nm"),
                                row.findReal("mean_power_w"),
                                row.findReal("correction")),
                        row.text("knock")),
                session);
    }
}
