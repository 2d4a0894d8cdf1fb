package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.nextpull.fit.Experience;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;

/**
 * What an advice is made from.
 *
 * @param plan the sweep plan
 * @param pulls all pulls of the day so far in order, whatever their standing
 * @param lifted numbers of the pulls whose knock and limits the operator lifted by name
 * @param experience what earlier days taught, where there were any
 * @param now the temperatures of this moment
 * @param next what is fitted for the next pull, as far as it differs from the last one
 * @param ownWatch limits that the operator said to watch alone where no channel does
 */
public record Day(
        SweepPlan plan,
        List<MeasuredPull> pulls,
        Set<Integer> lifted,
        Optional<Experience> experience,
        PresentConditions now,
        NextConfiguration next,
        Set<Limit> ownWatch) {
    public Day {
        pulls = List.copyOf(pulls);
        lifted = Set.copyOf(lifted);
        ownWatch = Set.copyOf(ownWatch);
    }

    /** The day as it stood after its first pulls. */
    Day first(int count) {
        return first(count, count);
    }

    /** The same with at most so many of those pulls, the newest. */
    Day first(int count, int newest) {
        return new Day(
                plan, pulls.subList(Math.max(0, count - newest), count), lifted, experience, now, next, ownWatch);
    }

    /** The same day as if there had been none before it. */
    Day withoutExperience() {
        return new Day(plan, pulls, lifted, Optional.empty(), now, next, ownWatch);
    }

    /** The same day with what another sweep of it taught, which began with what the days before had. */
    public Day withTaught(SurfaceKnowledge knowledge) {
        Experience taught =
                new Experience(knowledge, 1 + experience.map(Experience::days).orElse(0));
        return new Day(plan, pulls, lifted, Optional.of(taught), now, next, ownWatch);
    }

    /** A day whose next pull is of the same configuration as its last, and on which nobody can be asked who watches. */
    public Day(
            SweepPlan plan,
            List<MeasuredPull> pulls,
            Set<Integer> lifted,
            Optional<Experience> experience,
            PresentConditions now) {
        this(plan, pulls, lifted, experience, now, NextConfiguration.same(), Set.of(Limit.values()));
    }
}
