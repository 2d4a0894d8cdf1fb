package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * Days with engines, mishaps and limits drawn at random: whatever happens, no proposal leaves the plan, steps too far, or names what the
 * day forbids, and the day ends within its budget. The rules are written out here a second time, from the pulls alone.
 */
class RandomDaysTest {
    private static final double NOTHING = 1e-9;
    private static final int BUDGET = 25;

    static List<Long> seeds() {
        List<Long> seeds = new ArrayList<>();
        for (long seed = 1001; seed <= 1012; seed++) {
            seeds.add(seed);
        }
        return seeds;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noProposalBreaksARuleAndTheDayEnds(long seed) {
        Random random = new Random(seed);
        Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
        SimulatedDay.Truth truth = new SimulatedDay.Truth(
                18 + 20 * random.nextDouble(),
                0.80 + 0.12 * random.nextDouble(),
                random.nextBoolean() ? 18 + 14 * random.nextDouble() : 99,
                0.1 + 0.5 * random.nextDouble(),
                random.nextBoolean());
        double hotFrom = random.nextInt(3) == 0 ? 0.83 + 0.08 * random.nextDouble() : 99;
        Pulls day = kind == Kind.OFFSET ? new Pulls().asOffset() : new Pulls();
        for (int count = 0; count <= BUDGET; count++) {
            Verdict verdict = SimulatedDay.judge(kind.plan(), day.list());
            Advice advice = verdict.advice();
            String when = kind + ", seed " + seed + " after " + day.list().size() + " pulls: " + advice;
            verdict.chosen().ifPresent(chosen -> assertAllowed(chosen.setting(), day.list(), when));
            if (advice.action() == Action.STOP) {
                assertThat(advice.setting()).isEmpty();
                return;
            }
            EngineSetting next = advice.setting().orElseThrow();
            assertAllowed(next, day.list(), when);
            assertStep(next, day.list(), when);
            if (advice.action() == Action.REPEAT) {
                assertThat(day.list()).as(when).noneMatch(pull -> !pull.isClean() && isAt(next, pull));
            }
            run(next, day, truth, hotFrom, random);
        }
        throw new AssertionError("no stop within the budget, seed " + seed);
    }

    /** What a plan sweeps. */
    private enum Kind {
        SPARK,
        BOTH,
        OFFSET,
        MIXTURE;

        SweepPlan plan() {
            return switch (this) {
                case SPARK -> Pulls.timingOnly();
                case BOTH -> Pulls.bothFactors();
                case OFFSET -> Pulls.plan("""
                        [timing]
                        sets = "offset"
                        start_deg = 20
                        least_deg = 12
                        most_deg = 36
                        """);
                case MIXTURE -> Pulls.plan("""
                        [fuel]
                        blend = "e10"
                        [mixture]
                        start_lambda = 0.84
                        richest_lambda = 0.78
                        leanest_lambda = 0.94
                        """);
            };
        }
    }

    /** The same with limits that now and then nothing watches: then half steps, and without a live lambda nothing leaner. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noStepIsLongerThanHalfWhereALimitIsNotWatched(long seed) {
        Random random = new Random(seed);
        SweepPlan plan = Pulls.limited();
        SimulatedDay.Truth truth = new SimulatedDay.Truth(
                18 + 20 * random.nextDouble(),
                0.80 + 0.12 * random.nextDouble(),
                random.nextBoolean() ? 18 + 14 * random.nextDouble() : 99,
                0.1 + 0.5 * random.nextDouble(),
                random.nextBoolean());
        Limit[] mayFail = {Limit.EXHAUST, Limit.LEAN, Limit.FUEL_PRESSURE};
        Pulls day = new Pulls();
        for (int count = 0; count <= BUDGET; count++) {
            Advice advice = SimulatedDay.judge(plan, day.list()).advice();
            if (advice.action() == Action.STOP) {
                return;
            }
            EngineSetting next = advice.setting().orElseThrow();
            String when = "seed " + seed + " after " + day.list().size() + " pulls: " + advice;
            assertAllowed(next, day.list(), when);
            assertHalfStep(next, day.list(), when);
            day.unwatched(
                    random.nextInt(3) == 0 ? new Limit[] {mayFail[random.nextInt(mayFail.length)]} : new Limit[0]);
            run(next, day, truth, 99, random);
        }
    }

    private static void assertHalfStep(EngineSetting next, List<MeasuredPull> day, String when) {
        List<MeasuredPull> clean = day.stream()
                .filter(MeasuredPull::isUsed)
                .filter(MeasuredPull::isClean)
                .toList();
        if (clean.isEmpty()) {
            return;
        }
        MeasuredPull last = day.get(day.size() - 1);
        double advance = next.advance().orElseThrow().deg();
        double lambda = next.lambda().map(Lambda::value).orElseThrow();
        if (!last.isWatched(Limit.KNOCK)) {
            double most =
                    clean.stream().mapToDouble(RandomDaysTest::advanceOf).max().orElseThrow();
            assertThat(advance).as(when).isLessThanOrEqualTo(most + 1 + NOTHING);
        }
        boolean hadKnock = day.stream().anyMatch(pull -> pull.knock().isHeard());
        if (!last.isWatched(Limit.EXHAUST) && !hadKnock) {
            double least =
                    clean.stream().mapToDouble(RandomDaysTest::advanceOf).min().orElseThrow();
            assertThat(advance).as(when).isGreaterThanOrEqualTo(least - 1 - NOTHING);
        }
        double leanest =
                clean.stream().mapToDouble(RandomDaysTest::lambdaOf).max().orElseThrow();
        if (!last.isWatched(Limit.EXHAUST) || !last.isWatched(Limit.FUEL_PRESSURE)) {
            assertThat(lambda).as(when).isLessThanOrEqualTo(leanest + 0.017 + NOTHING);
        }
        if (!last.isWatched(Limit.LEAN)) {
            assertThat(lambda).as(when).isLessThanOrEqualTo(leanest + NOTHING);
        }
    }

    private static void run(EngineSetting next, Pulls day, SimulatedDay.Truth truth, double hotFrom, Random random) {
        double advance = advanceOf(next);
        double lambda = next.lambda().map(Lambda::value).orElse(0.84);
        double torque = truth.torque(advance, lambda) * (1 + truth.scatterPercent() / 100 * random.nextGaussian());
        boolean knocks = advance >= truth.knockDeg() + 20 * (0.87 - lambda);
        if (knocks) {
            day.knocked(advance, lambda, torque);
        } else if (lambda + 0.004 * (24 - advance) >= hotFrom) {
            day.limited(advance, lambda, Limit.EXHAUST, 1190, 1150);
        } else if (random.nextInt(15) == 0) {
            day.limited(advance, lambda, Limit.COOLANT, 385, 380);
        } else if (truth.heard()) {
            day.clean(advance, lambda, torque);
        } else {
            day.unheard(advance, lambda, torque);
        }
        if (random.nextInt(8) == 0 && advance + 2 >= truth.knockDeg()) {
            day.knockedOutsideAPull(advance + 2 * random.nextDouble(), lambda);
        } else if (random.nextInt(10) == 0) {
            day.standing(random.nextBoolean() ? MeasuredPull.Status.CUT_SHORT : MeasuredPull.Status.STRUCK);
        }
    }

    private static void assertAllowed(EngineSetting next, List<MeasuredPull> day, String when) {
        double advance = advanceOf(next);
        assertThat(advance).as(when).isBetween(12.0, 36.0);
        assertThat((advance - 20) / 0.5).as(when).isEqualTo(Math.rint((advance - 20) / 0.5));
        next.lambda().ifPresent(lambda -> assertThat(lambda.value()).as(when).isBetween(0.78, 0.94));
        for (MeasuredPull pull : day) {
            double mixture = next.lambda().map(Lambda::value).orElse(0.84);
            boolean asLean = mixture >= lambdaOf(pull) - NOTHING;
            if (pull.knock().isHeard()) {
                assertThat(asLean && advance >= advanceOf(pull) - 2 - NOTHING)
                        .as("%s: within the margin of knock in pull %d", when, pull.number())
                        .isFalse();
            }
            boolean hot = pull.limitsMet().stream().anyMatch(met -> met.limit() == Limit.EXHAUST);
            if (hot && next.lambda().isPresent()) {
                assertThat(asLean)
                        .as("%s: as lean as the hot pull %d", when, pull.number())
                        .isFalse();
            }
        }
    }

    /** One step from the most daring clean pull that counts; with none, no more daring than the start. */
    private static void assertStep(EngineSetting next, List<MeasuredPull> day, String when) {
        List<MeasuredPull> clean = day.stream()
                .filter(MeasuredPull::isUsed)
                .filter(MeasuredPull::isClean)
                .toList();
        double advance =
                clean.stream().mapToDouble(RandomDaysTest::advanceOf).max().orElse(18);
        double lambda =
                clean.stream().mapToDouble(RandomDaysTest::lambdaOf).max().orElse(0.84 - 0.034);
        boolean sameAsHot =
                day.stream().anyMatch(pull -> !pull.isClean() && Math.abs(advanceOf(pull) - advanceOf(next)) < NOTHING);
        assertThat(next.advance().or(next::offset).map(Advance::deg).orElse(0.0))
                .as(when)
                .isLessThanOrEqualTo(advance + 2 + NOTHING + (clean.isEmpty() && sameAsHot ? 2 : 0));
        next.lambda()
                .ifPresent(value -> assertThat(value.value()).as(when).isLessThanOrEqualTo(lambda + 0.034 + NOTHING));
    }

    private static boolean isAt(EngineSetting next, MeasuredPull pull) {
        return Math.abs(advanceOf(pull) - advanceOf(next)) < 0.25
                && (next.lambda().isEmpty()
                        || Math.abs(lambdaOf(pull) - next.lambda().get().value()) < 0.0025);
    }

    /** The spark that stands where a setting names none. */
    private static double advanceOf(EngineSetting setting) {
        return setting.advance().or(setting::offset).map(Advance::deg).orElse(24.0);
    }

    private static double advanceOf(MeasuredPull pull) {
        return pull.setting()
                .advance()
                .or(() -> pull.setting().offset())
                .map(Advance::deg)
                .orElseThrow();
    }

    private static double lambdaOf(MeasuredPull pull) {
        return pull.setting().lambda().map(Lambda::value).orElseThrow();
    }
}
