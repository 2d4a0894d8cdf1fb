package org.nextpull.notebook;

import java.util.Optional;
import org.nextpull.advice.Verdict;
import org.nextpull.fit.Experience;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.session.SessionResult;

/** What a session teaches, kept beside it. */
final class Lessons {
    private Lessons() {}

    static void replace(Database database, long session, SessionResult result) throws NotebookException {
        database.run("delete from knowledge where session = ?", session);
        Optional<SurfaceKnowledge> knowledge = result.verdict().flatMap(Verdict::teaches);
        if (knowledge.isPresent()) {
            Entry.into("knowledge")
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
