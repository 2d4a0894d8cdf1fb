package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.Belief;
import org.nextpull.fit.CarriedShape;
import org.nextpull.fit.Experience;
import org.nextpull.fit.MixturePrior;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.unit.Lambda;

/** Rule 8: what earlier days taught may shorten a step, never lengthen one, whatever they taught. */
class LearnedStepTest {
    /** On the last of these days what was taught would go further than its own pulls. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 268})
    void noStepIsLongerThanWithoutExperience(long seed) {
        Random random = new Random(seed);
        Experience experience =
                taught(1e-5 * Math.exp(6 * random.nextDouble()), 15 + 25 * random.nextDouble(), random.nextInt(9));
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

    /** A day of an engine with that curvature, and that best lambda in hundredths over 0.70. */
    static Experience taught(double curvature, double hundredths, int days) {
        SpeedRows rows = SpeedRows.ofRpm(3000, 4500, 6000);
        MixturePrior mixture = MixturePrior.ofGuess(Lambda.of(0.70 + hundredths / 100));
        return new Experience(
                new SurfaceKnowledge(
                        SparkMap.of(rows.rpm(), new double[] {24, 28, 30}),
                        new CarriedShape(rows, new double[9]),
                        new Belief(Math.log(curvature), 0.05),
                        new Belief(Math.log(0.3), 0.3),
                        SurfacePriors.Shape.usual(),
                        new Belief(-0.015, 0.012),
                        Optional.of(mixture)),
                1 + days);
    }

    private static Optional<Double> advance(Verdict verdict) {
        return verdict.advice()
                .setting()
                .filter(setting -> verdict.advice().action() != Action.STOP)
                .flatMap(EngineSetting::advance)
                .map(advance -> advance.deg());
    }

    private static Verdict verdict(Pulls day, Optional<Experience> experience) {
        return Advisor.judge(
                new Day(Pulls.timingOnly(), day.list(), Set.of(), experience, PresentConditions.unknown()));
    }
}
