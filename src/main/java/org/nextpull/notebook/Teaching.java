package org.nextpull.notebook;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.nextpull.fit.Belief;
import org.nextpull.fit.Experience;
import org.nextpull.fit.Kin;
import org.nextpull.fit.PooledScatter;
import org.nextpull.fit.SweepPriors;
import org.nextpull.scatter.Scatter;

/**
 * What earlier days together teach, always wider than what they saw.
 *
 * <p>Curvature: the log of a day's curvature is that of its engine plus a change of the day, and engines lie about the usual belief as
 * it is without a notebook (a normal hierarchy; Gelman and others, Bayesian Data Analysis, section 5.4, with the spreads between days
 * given instead of estimated, since a shop has few days; from memory). What is expected of a new day is the engine with the change of
 * one more day. Scatter: pooled over the days, with few degrees of freedom, since days differ in scatter by more than their repeats say.
 */
final class Teaching {
    /** Spread of the log of the curvature from day to day of one engine on one fuel; no source, chosen wide. */
    private static final double DAY_SD = 0.25;

    /** The same between fuels, and between engines of one class. */
    private static final double CLASS_SD = 0.4;

    private static final int DAYS_THAT_TELL_A_SPREAD = 3;
    private static final double SHARE_OF_FREEDOM_ENGINE = 0.5;
    private static final double SHARE_OF_FREEDOM_CLASS = 0.25;
    private static final double MOST_FREEDOM_ENGINE = 12;
    private static final double MOST_FREEDOM_CLASS = 6;

    private final List<PastDays.Day> days;
    private final Kin kin;

    /**
     * Days of one engine, or of its class.
     *
     * @param kin which; decides how wide it is all kept
     */
    Teaching(List<PastDays.Day> days, Kin kin) {
        this.days = List.copyOf(days);
        this.kin = kin;
    }

    /** What they teach; empty when it is no narrower than what is believed anyway. */
    Optional<Experience> experience() {
        Optional<Belief> timing = curvature(
                PastDays.Day::timing, SweepPriors.timing(0).curvature().asNormal());
        Optional<Belief> mixture = curvature(
                PastDays.Day::mixture, SweepPriors.mixture(0).curvature().asNormal());
        Optional<PooledScatter> scatter = scatter();
        return timing.isEmpty() && mixture.isEmpty() && scatter.isEmpty()
                ? Optional.empty()
                : Optional.of(new Experience(timing, mixture, scatter, days.size(), kin));
    }

    private Optional<Belief> curvature(Function<PastDays.Day, Optional<Belief>> of, Belief usual) {
        List<PastDays.Day> taught =
                days.stream().filter(day -> of.apply(day).isPresent()).toList();
        double precision = 1 / (usual.sd() * usual.sd());
        double sum = precision * usual.centre();
        double seen =
                spread(taught.stream().map(day -> of.apply(day).orElseThrow()).toList());
        for (PastDays.Day day : taught) {
            Belief lesson = of.apply(day).orElseThrow();
            double own = Math.max(seen, day.isSameEngine() && day.isSameFuel() ? DAY_SD : CLASS_SD);
            double weight = 1 / (own * own + lesson.sd() * lesson.sd());
            precision += weight;
            sum += weight * lesson.centre();
        }
        double change = Math.max(seen, kin == Kin.ENGINE ? DAY_SD : CLASS_SD);
        double sd = Math.sqrt(1 / precision + change * change);
        return taught.isEmpty() || sd >= usual.sd() ? Optional.empty() : Optional.of(new Belief(sum / precision, sd));
    }

    /** Spread of what the days found, where there are enough of them; else zero. */
    private static double spread(List<Belief> lessons) {
        if (lessons.size() < DAYS_THAT_TELL_A_SPREAD) {
            return 0;
        }
        double mean = lessons.stream().mapToDouble(Belief::centre).average().orElse(0);
        double squares = lessons.stream()
                .mapToDouble(lesson -> (lesson.centre() - mean) * (lesson.centre() - mean))
                .sum();
        return Math.sqrt(squares / (lessons.size() - 1));
    }

    private Optional<PooledScatter> scatter() {
        List<Scatter> known =
                days.stream().flatMap(day -> day.scatter().stream()).toList();
        double freedom = known.stream().mapToDouble(Scatter::degreesOfFreedom).sum();
        if (freedom <= 0) {
            return Optional.empty();
        }
        double squares = known.stream()
                .mapToDouble(scatter -> scatter.degreesOfFreedom() * scatter.percent() * scatter.percent())
                .sum();
        double kept = kin == Kin.ENGINE
                ? Math.min(MOST_FREEDOM_ENGINE, SHARE_OF_FREEDOM_ENGINE * freedom)
                : Math.min(MOST_FREEDOM_CLASS, SHARE_OF_FREEDOM_CLASS * freedom);
        return Optional.of(PooledScatter.of(Math.sqrt(squares / freedom), kept));
    }
}
