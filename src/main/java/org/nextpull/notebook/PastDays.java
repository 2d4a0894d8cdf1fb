package org.nextpull.notebook;

import java.io.IOException;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.nextpull.fit.Belief;
import org.nextpull.fit.Experience;
import org.nextpull.fit.Kin;
import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.scatter.Scatter;
import org.nextpull.session.SourcePulls;

/** Finds the earlier days of an engine, or else of its class. */
final class PastDays {
    /** Displacements this near, as a share, are of one class. */
    private static final double SAME_DISPLACEMENT = 0.2;

    /** Older days than these are another season. */
    private static final int MOST_DAYS = 30;

    private static final String SELECT = """
            select s.*,
                (select ln_curvature from lesson l where l.session = s.id and factor = 'timing') as timing,
                (select sd from lesson l where l.session = s.id and factor = 'timing') as timing_sd,
                (select ln_curvature from lesson l where l.session = s.id and factor = 'mixture') as mixture,
                (select sd from lesson l where l.session = s.id and factor = 'mixture') as mixture_sd
            from session s
            where exists (select 1 from pull p where p.session = s.id and p.standing = 'used')
            order by s.id desc
            """;

    private final Database database;
    private final SweepPlan plan;

    PastDays(Database database, SweepPlan plan) {
        this.database = database;
        this.plan = plan;
    }

    /**
     * What they teach.
     *
     * @param today logs of the day that is to be advised; a session that holds one of their pulls is that day itself and teaches nothing
     */
    Optional<Experience> experience(List<SourcePulls> today) throws IOException {
        Set<Long> same = SamePulls.sessions(database, today);
        List<Day> days =
                database.list(SELECT, row -> same.contains(row.wide("id")) ? Optional.<Day>empty() : day(row)).stream()
                        .flatMap(Optional::stream)
                        .filter(Day::taughtAnything)
                        .toList();
        List<Day> own = days.stream().filter(Day::isSameEngine).limit(MOST_DAYS).toList();
        return own.isEmpty()
                ? new Teaching(days.stream().limit(MOST_DAYS).toList(), Kin.CLASS).experience()
                : new Teaching(own, Kin.ENGINE).experience();
    }

    private Optional<Day> day(QueryRow row) throws SQLException {
        Optional<String> engine = row.find("engine");
        boolean isSameEngine = engine.isPresent()
                && plan.engine()
                        .name()
                        .filter(name -> plain(name).equals(plain(engine.get())))
                        .isPresent();
        boolean isSameFuel = plan.fuel().blend().equals(row.find("fuel"));
        if (!isSameEngine && !(isSameFuel && isSameClass(row))) {
            return Optional.empty();
        }
        OptionalDouble freedom = row.findReal("scatter_df");
        return Optional.of(new Day(
                isSameEngine,
                isSameFuel,
                belief(row, "timing"),
                belief(row, "mixture"),
                freedom.isPresent() && freedom.getAsDouble() > 0
                        ? row.find("scatter_percent", percent -> new Scatter(percent, freedom.getAsDouble()))
                        : Optional.empty()));
    }

    private boolean isSameClass(QueryRow row) throws SQLException {
        EngineFacts engine = plan.engine();
        OptionalInt cylinders = row.findInteger("cylinders");
        OptionalDouble displacement = row.findReal("displacement_m3");
        boolean isNear = displacement.isPresent()
                && engine.displacementM3().isPresent()
                && Math.abs(displacement.getAsDouble() / engine.displacementM3().getAsDouble() - 1)
                        <= SAME_DISPLACEMENT;
        return Ids.of(engine.induction()).equals(row.text("induction"))
                && cylinders.isPresent()
                && cylinders.equals(engine.cylinders())
                && isNear;
    }

    private static Optional<Belief> belief(QueryRow row, String column) throws SQLException {
        double sd = row.real(column + "_sd");
        return row.find(column, centre -> new Belief(centre, sd));
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /**
     * What one earlier session taught.
     *
     * @param isSameEngine whether it carries the name of the engine
     * @param isSameFuel whether it ran on the same fuel
     * @param timing natural log of the curvature of its timing sweep
     * @param mixture the same of its mixture bracket
     * @param scatter scatter of its repeats
     */
    record Day(
            boolean isSameEngine,
            boolean isSameFuel,
            Optional<Belief> timing,
            Optional<Belief> mixture,
            Optional<Scatter> scatter) {
        boolean taughtAnything() {
            return timing.isPresent() || mixture.isPresent() || scatter.isPresent();
        }
    }
}
