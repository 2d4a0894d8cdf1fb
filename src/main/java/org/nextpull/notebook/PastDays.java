package org.nextpull.notebook;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.nextpull.fit.Experience;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.SourcePulls;

/** Finds what the newest earlier day of an engine left, which began with what the days before it had left. */
final class PastDays {
    private static final String SELECT = """
            select s.id, s.engine, s.fuel, k.days, k.content
            from session s join knowledge k on k.session = s.id
            where k.kind = ?
            order by s.fuel is not ?, s.id desc
            """;

    private final Database database;
    private final SweepPlan plan;

    PastDays(Database database, SweepPlan plan) {
        this.database = database;
        this.plan = plan;
    }

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
        Set<Long> same = SamePulls.sessions(database, today);
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
                        Lessons.kind(plan),
                        plan.fuel().blend())
                .stream()
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
