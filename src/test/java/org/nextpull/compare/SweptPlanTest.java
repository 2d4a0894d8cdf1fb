package org.nextpull.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.nextpull.compare.SimulatedDay.Slow;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.math.Estimate;
import org.nextpull.scatter.Scatter;

/** Decision runs that are planned after a sweep of each label, on invented days: the plan knows of the scatter what the verdict will. */
class SweptPlanTest {
    private static final int DAYS = 600;
    private static final List<String> LABELS = List.of("A", "B");
    private static final PullPlan.Wish WISH = new PullPlan.Wish(1, 0.8);
    /** Steps of the logarithm in which the sweeps tell a scatter, so that days share their plans. */
    private static final double STEP = 0.2;

    /**
     * The chance that is wished is reached, the one that is stated within 4 points, and the half width that is stated within 6 %: pulls that
     * lie far off cost that much.
     */
    @Test
    void theChanceThatIsStatedIsReached() {
        Days known = Days.plannedWith(1);
        double error = Math.sqrt(known.chance() * (1 - known.chance()) / DAYS);
        assertThat(known.found()).isGreaterThan(WISH.power()).isCloseTo(known.chance(), within(0.04 + 3 * error));
        assertThat(known.widening()).isBetween(1.0, 1.06);
    }

    /** A plan without what the sweeps tell asks for a third more runs than the verdict takes; one that counts it twice promises too much. */
    @Test
    void noOtherKnowledgeForetellsTheVerdict() {
        Days without = Days.plannedWith(0);
        assertThat(without.runs()).isGreaterThan(1.25 * Days.plannedWith(1).runs());
        assertThat(without.widening()).isLessThan(0.9);
        assertThat(Days.plannedWith(2).widening()).isGreaterThan(1.065);
    }

    /**
     * Means of many days.
     *
     * @param runs that were planned
     * @param chance that was stated
     * @param found part of the days on which the difference was found
     * @param widening half width that came out over the one that was stated
     */
    private record Days(double runs, double chance, double found, double widening) {
        /** Plans that count the degrees of freedom of the sweeps so many times; the verdict counts them once. */
        static Days plannedWith(double times) {
            SplittableRandom random = new SplittableRandom(51);
            Map<LabelScatters, PullPlan> plans = new HashMap<>();
            double runs = 0;
            double chance = 0;
            double found = 0;
            double foretold = 0;
            double half = 0;
            for (int day = 0; day < DAYS; day++) {
                double scatter = 0.3 * Math.pow(2, 2 * random.nextDouble() - 1);
                Map<String, Scatter> told = Map.of("A", told(scatter, random), "B", told(scatter, random));
                PullPlan plan =
                        plans.computeIfAbsent(planned(told, times), known -> PullPlan.decision(known, WISH, LABELS, 3));
                List<ComparedPull> pulls = SimulatedDay.of(String.join("", plan.order()), 1, Slow.walk(0.05))
                        .withScatter(scatter)
                        .withOutliers(0.05)
                        .pulls(random);
                Estimate difference = new DayModel(LABELS, told).fit(pulls).differencePercent("B", "A");
                runs += (double) plan.pulls() / DAYS;
                chance += plan.power() / DAYS;
                foretold += plan.halfWidthPercent();
                half += difference.halfWidth(0.95);
                if (SimulatedDay.isClaimed(pulls, difference, new InterimLooks.Planned(plan.pulls()))) {
                    found += 1.0 / DAYS;
                }
            }
            return new Days(runs, chance, found, half / foretold);
        }

        private static LabelScatters planned(Map<String, Scatter> told, double times) {
            if (times > 0) {
                Map<String, Scatter> counted = new HashMap<>();
                told.forEach((label, scatter) ->
                        counted.put(label, new Scatter(scatter.percent(), times * scatter.degreesOfFreedom())));
                return new LabelScatters(0.3, counted);
            }
            return LabelScatters.of(
                    told.values().stream().mapToDouble(Scatter::percent).max().orElseThrow());
        }

        /** As the sweeps of the planner's bench tell it. */
        private static Scatter told(double scatter, SplittableRandom random) {
            double ln = Math.log(scatter) + SimulatedDay.SWEEPS_TELL_WITHIN * random.nextGaussian();
            return new Scatter(Math.exp(STEP * Math.round(ln / STEP)), SurfaceKnowledge.SWEEP_FREEDOM);
        }
    }
}
