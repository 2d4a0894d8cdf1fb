package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.fit.Belief;
import org.nextpull.fit.Experience;
import org.nextpull.fit.PooledScatter;
import org.nextpull.scatter.Repeatability;

/** Rule 8: what earlier days taught may shorten a step, never lengthen one, whatever they taught. */
class LearnedStepTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void noStepIsLongerThanWithoutExperience(long seed) {
        Random random = new Random(seed);
        Experience experience = new Experience(
                Optional.of(new Belief(Math.log(1e-5) + 6 * random.nextDouble(), 0.05 + 0.4 * random.nextDouble())),
                Optional.of(new Belief(Math.log(1e-5) + 6 * random.nextDouble(), 0.05 + 0.4 * random.nextDouble())),
                Optional.of(PooledScatter.of(0.05 + random.nextDouble(), 30 * random.nextDouble())),
                1 + random.nextInt(9));
        double peak = 22 + 10 * random.nextDouble();
        double curvature = 2e-4 + 1e-3 * random.nextDouble();
        Pulls day = new Pulls();
        double highest = 0;
        for (int pull = 0; pull < 7; pull++) {
            Verdict usual = verdict(day, Optional.empty());
            Verdict learned = verdict(day, Optional.of(experience));
            double most = advance(usual).orElse(highest);
            assertThat(advance(learned).orElse(0.0))
                    .as("seed %d, pull %d", seed, pull + 1)
                    .isLessThanOrEqualTo(Math.max(highest, most) + 1e-9);
            double run = advance(usual).orElse(highest);
            double x = run - peak;
            double torque = 200 * (1 - curvature * x * x) * (1 + 0.002 * random.nextGaussian());
            day = day.clean(run, 0.84, torque);
            highest = Math.max(highest, run);
        }
    }

    private static Optional<Double> advance(Verdict verdict) {
        return verdict.advice()
                .setting()
                .filter(setting -> verdict.advice().action() != Action.STOP)
                .flatMap(Proposal::advance)
                .map(advance -> advance.deg());
    }

    private static Verdict verdict(Pulls day, Optional<Experience> experience) {
        return Advisor.judge(new Day(
                Pulls.timingOnly(),
                day.list(),
                Set.of(),
                Repeatability.unknown(),
                experience,
                PresentConditions.unknown()));
    }
}
