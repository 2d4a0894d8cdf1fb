package org.nextpull.notebook;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.nextpull.advice.Verdict;
import org.nextpull.fit.Experience;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.pull.Candidate;
import org.nextpull.session.PullFingerprint;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;

/** Finds what the newest earlier day of an engine left, which began with what the days before it had left. */
record PastDays(Database database, SweepPlan plan) {
    private static final String SELECT = """
            select s.id, s.engine, s.fuel, k.days, k.content
            from session s join knowledge k on k.session = s.id
            where k.kind = ?
            order by s.fuel is not ?, s.id desc
            """;

    /**
     * What it teaches: the newest day on the same fuel, else on another.
     *
     * @param today logs of the day that is to be advised; a session that holds one of their pulls is that day itself and teaches nothing
     */
    Optional<Experience> experience(List<SourcePulls> today) throws IOException {
        Optional<String> engine = plan.engine().name().map(PastDays::plain);
        if (engine.isEmpty()) {
            return Optional.empty();
        }
        Set<Long> same = withSamePulls(database, today);
        return database
                .list(
                        SELECT,
                        row -> same.contains(row.wide("id"))
                                        || !row.find("engine")
                                                .map(PastDays::plain)
                                                .equals(engine)
                                ? Optional.<Experience>empty()
                                : Optional.of(
                                        new Experience(KnowledgeText.read(row.text("content")), row.integer("days"))),
                        kind(plan),
                        plan.fuel().blend())
                .stream()
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** Numbers of the sessions, ascending. */
    static SortedSet<Long> withSamePulls(Database database, List<SourcePulls> day) throws IOException {
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

    static void teach(Database database, long session, SessionResult result) throws NotebookException {
        database.run("delete from knowledge where session = ?", session);
        Optional<SurfaceKnowledge> knowledge = result.verdict().flatMap(Verdict::teaches);
        if (knowledge.isPresent()) {
            InsertRow.into("knowledge")
                    .put("session", session)
                    .put("kind", kind(result.plan()))
                    .put("days", 1 + result.experience().map(Experience::days).orElse(0))
                    .put("content", KnowledgeText.of(knowledge.get()))
                    .insert(database);
        }
    }

    /** In what the spark of a plan is counted: degrees on a map that nobody knows say nothing of those before top dead centre. */
    static String kind(SweepPlan plan) {
        return plan.timing()
                .map(timing -> timing.sets() == TimingPlan.Sets.OFFSET ? "offset" : "absolute")
                .orElse("standing");
    }
}
