package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.nextpull.advice.TenRulesTest.advanceOf;
import static org.nextpull.advice.TenRulesTest.both;
import static org.nextpull.advice.TenRulesTest.climb;
import static org.nextpull.advice.TenRulesTest.lambdaOf;
import static org.nextpull.advice.TenRulesTest.timing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.EngineSetting;
import org.nextpull.fit.Experience;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Temperature;

/** The rules that keep an engine alive, from what is not watched to what is left, each through the advice of a day. */
class TenRulesOnLimitsTest {
    private static final double HOT_K = 1200;
    private static final double ALLOWED_K = 1150;

    @Nested
    @DisplayName(
            "Rule 4: the same holds for every limit: where nothing watches it, half steps, and asked for only once told")
    class Unwatched {
        private final SweepPlan limited = Pulls.limited();
        private final SweepPlan mixtureOnly = Pulls.plan("""
                [mixture]
                start_lambda = 0.84
                richest_lambda = 0.78
                leanest_lambda = 0.94
                [limits]
                exhaust_c = 900
                fuel_pressure_kpa = 250
                injector_duty_percent = 88
                """);

        /** Torque still rises toward lean; the rich step was clean. */
        private Pulls bracket(Limit... unwatched) {
            return new Pulls()
                    .clean(20, 0.84, 190)
                    .clean(20, 0.84, 190.2)
                    .unwatched(unwatched)
                    .clean(20, 0.806, 186);
        }

        @Test
        @DisplayName("4: knock that the plan limits and nothing measures halves every step of advance")
        void knockNotMeasuredHalvesEveryStep() {
            Pulls day = new Pulls().unheard(20, 0.84, 190).unheard(20, 0.84, 190.2);
            assertThat(advanceOf(SimulatedDay.judge(limited, day.list()))).isEqualTo(21);
            assertThat(advanceOf(SimulatedDay.judge(
                            limited,
                            new Pulls()
                                    .clean(20, 0.84, 190)
                                    .clean(20, 0.84, 190.2)
                                    .list())))
                    .isEqualTo(22);
        }

        @ParameterizedTest
        @EnumSource(
                value = Limit.class,
                names = {"EXHAUST", "FUEL_PRESSURE", "INJECTOR_DUTY"})
        @DisplayName("4: a lean step is halved while exhaust, fuel pressure or duty is not watched")
        void aLeanStepIsHalved(Limit limit) {
            double whole = lambdaOf(SimulatedDay.judge(mixtureOnly, bracket().list()));
            assertThat(whole).isGreaterThan(0.84 + 0.017);
            double half =
                    lambdaOf(SimulatedDay.judge(mixtureOnly, bracket(limit).list()));
            assertThat(half).isGreaterThan(0.84).isLessThanOrEqualTo(0.84 + 0.017 + 1e-9);
        }

        @Test
        @DisplayName("4: retard is no more than half a step while the exhaust is not watched, but for knock")
        void retardIsHalved() {
            Pulls falling = new Pulls()
                    .clean(20, 0.84, 190)
                    .clean(20, 0.84, 190.2)
                    .unwatched(Limit.EXHAUST)
                    .clean(22, 0.84, 180);
            assertThat(advanceOf(SimulatedDay.judge(limited, falling.list()))).isGreaterThanOrEqualTo(19);
            SweepPlan hotSide = Pulls.plan("""
                    [timing]
                    start_deg = 20
                    least_deg = 12
                    most_deg = 36
                    [limits]
                    exhaust_c = 900
                    """);
            Verdict knocked = SimulatedDay.judge(
                    hotSide,
                    new Pulls()
                            .unwatched(Limit.EXHAUST)
                            .clean(20, 0.84, 190)
                            .knocked(20, 0.84, 190)
                            .list());
            assertThat(knocked.advice().setting().map(any -> advanceOf(knocked)).orElse(0.0))
                    .as("knock needs its margin, and gets it")
                    .isLessThan(18);
        }

        @Test
        @DisplayName("4: live, no step toward the danger is asked for before the operator has said so")
        void liveAsksFirst() {
            Pulls day = new Pulls().unheard(20, 0.84, 190).unheard(20, 0.84, 190.2);
            Advice asked = SimulatedDay.live(limited, day.list()).advice();
            assertThat(asked.code()).isEqualTo(AdviceCode.NOT_WATCHED);
            assertThat(asked.action()).isEqualTo(Action.WAIT);
            assertThat(((Reason.NotWatched) asked.reason()).limits()).containsExactly(Limit.KNOCK);
            assertThat(asked.setting()
                            .flatMap(EngineSetting::advance)
                            .orElseThrow()
                            .deg())
                    .isEqualTo(20);
            assertThat(advanceOf(SimulatedDay.live(limited, day.list(), Limit.KNOCK)))
                    .isEqualTo(21);
            assertThat(SimulatedDay.live(limited, day.list(), Limit.EXHAUST)
                            .advice()
                            .code())
                    .isEqualTo(AdviceCode.NOT_WATCHED);
        }

        @Test
        @DisplayName("4: without a live lambda nothing leaner is asked for, whatever the operator said")
        void aDeadLambdaNeverLeadsToALeanerSetting() {
            for (Verdict verdict : List.of(
                    SimulatedDay.judge(mixtureOnly, bracket(Limit.LEAN).list()),
                    SimulatedDay.live(mixtureOnly, bracket(Limit.LEAN).list(), Limit.values()))) {
                assertThat(verdict.advice().code()).isEqualTo(AdviceCode.NOT_WATCHED);
                assertThat(lambdaOf(verdict)).isLessThanOrEqualTo(0.84);
                assertThat(((Reason.NotWatched) verdict.advice().reason()).byHand())
                        .isFalse();
            }
        }
    }

    @Nested
    @DisplayName("Rule 5: an exhaust too hot is never answered by retard; out of window means wait")
    class Heat {
        @Test
        @DisplayName("5: lift, cool, one step richer at the same advance")
        void hotMeansRicher() {
            Advice advice = both(climb().limited(24, 0.84, Limit.EXHAUST, HOT_K, ALLOWED_K))
                    .advice();

            assertThat(advice.code()).isEqualTo(AdviceCode.COOL_EXHAUST);
            assertThat(advice.action()).isEqualTo(Action.WAIT);
            assertThat(advice.setting()
                            .flatMap(EngineSetting::advance)
                            .orElseThrow()
                            .deg())
                    .isEqualTo(24);
            assertThat(advice.setting()
                            .flatMap(EngineSetting::lambda)
                            .orElseThrow()
                            .value())
                    .isCloseTo(0.805, org.assertj.core.data.Offset.offset(1e-9));
            WaitFor wait = advice.waitFor().orElseThrow();
            assertThat(wait.condition()).isEqualTo(WaitFor.Condition.EXHAUST);
            assertThat(wait.now().kelvins()).isEqualTo(HOT_K);
            assertThat(wait.want().kelvins()).isEqualTo(ALLOWED_K);
            assertThat(wait.atLeastSeconds()).isPositive();
            assertThat(advice.leave()).isPresent();
        }

        @Test
        @DisplayName("5: once cooled the richer pull follows; a mixture that was too hot is not run again")
        void cooledMeansTheRicherPull() {
            Pulls day = climb().limited(24, 0.84, Limit.EXHAUST, HOT_K, ALLOWED_K);
            PresentConditions cool = new PresentConditions(
                    Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(Temperature.ofKelvins(900)));
            Verdict verdict = SimulatedDay.judge(Pulls.bothFactors(), day.list(), Set.of(), cool);
            assertThat(verdict.advice().action()).isEqualTo(Action.PULL);

            Verdict next = both(day.clean(24, 0.805, 195));
            assertThat(lambdaOf(next)).isLessThan(0.84);
            assertThat(advanceOf(next)).as("no further retard").isGreaterThanOrEqualTo(24);
        }

        @Test
        @DisplayName("5: without a mixture to set, heat ends the sweep, and later proposals are not more retarded")
        void withoutAMixtureHeatEndsTheSweep() {
            Pulls day = new Pulls()
                    .clean(20, 0.84, 190)
                    .clean(20, 0.84, 190.2)
                    .limited(18, 0.84, Limit.EXHAUST, HOT_K, ALLOWED_K);
            assertThat(timing(day).advice().code()).isEqualTo(AdviceCode.LIMIT_MET);
            assertThat(timing(day).advice().leave()).isPresent();

            Verdict next = timing(day.clean(22, 0.84, 189).clean(22, 0.84, 187).clean(24, 0.84, 180));
            assertThat(next.advice().setting().map(any -> advanceOf(next)).orElse(99.0))
                    .isGreaterThan(18);
        }

        @Test
        @DisplayName(
                "5: a retarded start that heats the exhaust is left toward advance, a step a pull, each after cooling")
        void aHotStartIsLeftTowardAdvance() {
            Pulls day = new Pulls().limited(20, 0.84, Limit.EXHAUST, HOT_K, ALLOWED_K);
            for (int deg = 22; deg <= 24; deg += 2) {
                Advice advice = timing(day).advice();
                assertThat(advice.code()).isEqualTo(AdviceCode.COOL_EXHAUST);
                assertThat(advice.action()).isEqualTo(Action.WAIT);
                assertThat(advanceOf(timing(day))).isEqualTo(deg);
                day.limited(deg, 0.84, Limit.EXHAUST, HOT_K, ALLOWED_K);
            }
            assertThat(advanceOf(timing(day.clean(26, 0.84, 197))))
                    .as("never back to what was hot")
                    .isGreaterThan(24);
        }

        @Test
        @DisplayName("5: a hot pull after one that knocked there clears nothing")
        void aHotPullThatKnockedClearsNothing() {
            Pulls knocked = new Pulls().knocked(20, 0.84, 190).limited(20, 0.84, Limit.EXHAUST, HOT_K, ALLOWED_K);
            assertThat(timing(knocked).advice().setting().map(any -> advanceOf(timing(knocked))))
                    .isEmpty();
        }

        @Test
        @DisplayName("5: at the richest mixture heat ends the sweep")
        void atTheRichestHeatEndsTheSweep() {
            Pulls day = climb().limited(24, 0.78, Limit.EXHAUST, HOT_K, ALLOWED_K);

            assertThat(both(day).advice().code()).isEqualTo(AdviceCode.LIMIT_MET);
        }

        @Test
        @DisplayName("5: coolant, oil and inlet air out of window mean wait, with how far and how long")
        void outOfWindowMeansWait() {
            SweepPlan plan = Pulls.plan("""
                    [timing]
                    start_deg = 20
                    least_deg = 12
                    most_deg = 36
                    [start]
                    coolant_c = [80, 90]
                    oil_c = [85, 105]
                    inlet_c = [15, 35]
                    cool_down_s = 90
                    """);
            Optional<Temperature> right = Optional.of(Temperature.ofKelvins(273.15 + 88));
            Optional<Temperature> cold = Optional.of(Temperature.ofKelvins(273.15 + 60));
            Optional<Temperature> hot = Optional.of(Temperature.ofKelvins(273.15 + 120));
            Optional<Temperature> mild = Optional.of(Temperature.ofKelvins(273.15 + 25));

            assertWait(plan, new PresentConditions(cold, right, mild, Optional.empty()), WaitFor.Condition.COOLANT, 80);
            assertWait(plan, new PresentConditions(right, hot, mild, Optional.empty()), WaitFor.Condition.OIL, 105);
            assertWait(
                    plan, new PresentConditions(right, right, cold, Optional.empty()), WaitFor.Condition.INLET_AIR, 35);
            Verdict ready = SimulatedDay.judge(
                    plan, climb().list(), Set.of(), new PresentConditions(right, right, mild, Optional.empty()));
            assertThat(ready.advice().action()).isEqualTo(Action.PULL);
        }

        private void assertWait(SweepPlan plan, PresentConditions now, WaitFor.Condition condition, double wantC) {
            Advice advice =
                    SimulatedDay.judge(plan, climb().list(), Set.of(), now).advice();
            assertThat(advice.action()).isEqualTo(Action.WAIT);
            assertThat(advice.code()).isEqualTo(AdviceCode.OUT_OF_WINDOW);
            WaitFor wait = advice.waitFor().orElseThrow();
            assertThat(wait.condition()).isEqualTo(condition);
            assertThat(wait.want().kelvins()).isCloseTo(273.15 + wantC, org.assertj.core.data.Offset.offset(1e-6));
            assertThat(wait.atLeastSeconds()).isEqualTo(90);
            assertThat(advice.leave()).isPresent();
        }
    }

    @Nested
    @DisplayName("Rule 6: what goes leaner gives up advance, and a bracket at a spark that stands goes rich first")
    class Bracket {
        private final SweepPlan mixtureOnly = Pulls.plan("""
                [mixture]
                start_lambda = 0.84
                richest_lambda = 0.78
                leanest_lambda = 0.94
                """);

        @ParameterizedTest
        @ValueSource(longs = {61, 62, 63})
        @DisplayName(
                "6: no advance but what the most daring clean pull leaves at that mixture, and never a step beyond in lean")
        void leanerGivesUpAdvance(long seed) {
            SimulatedDay day =
                    new SimulatedDay(Pulls.bothFactors(), new SimulatedDay.Truth(27, 0.89, 99, 0.15, true), seed).run();
            List<MeasuredPull> pulls = day.pulls();

            assertThat(day.last().action()).isEqualTo(Action.STOP);
            for (int i = 1; i < pulls.size(); i++) {
                double lambda = pulls.get(i).setting().lambda().orElseThrow().value();
                double most = Double.NEGATIVE_INFINITY;
                double leanest = Double.NEGATIVE_INFINITY;
                for (MeasuredPull before : pulls.subList(0, i)) {
                    double there = before.setting().lambda().orElseThrow().value();
                    double leaner = 100 * (lambda - there);
                    leanest = Math.max(leanest, there);
                    most = Math.max(
                            most, before.setting().advance().orElseThrow().deg() - 0.3 * Math.max(0, leaner - 1));
                }
                assertThat(pulls.get(i).setting().advance().orElseThrow().deg())
                        .as("pull %d", i + 1)
                        .isLessThanOrEqualTo(most + 2 + 1e-9);
                assertThat(lambda).isLessThanOrEqualTo(leanest + 0.034 + 1e-9);
            }
        }

        @Test
        @DisplayName("6: with the spark standing, rich first; after knock there nothing that lean")
        void richFirst() {
            Pulls day = new Pulls().clean(24, 0.84, 190);
            double rich = lambdaOf(SimulatedDay.judge(mixtureOnly, day.list()));
            assertThat(rich).isLessThan(0.84 - 0.016);

            Verdict clean = SimulatedDay.judge(
                    mixtureOnly,
                    new Pulls().addAll(day.list()).clean(24, rich, 187).list());
            assertThat(lambdaOf(clean)).isGreaterThan(0.84);

            Verdict knocked = SimulatedDay.judge(
                    mixtureOnly,
                    new Pulls().addAll(day.list()).knockedAndCut(24, rich).list());
            assertThat(knocked.advice()
                            .setting()
                            .flatMap(EngineSetting::lambda)
                            .map(Lambda::value)
                            .orElse(0.0))
                    .isLessThan(rich);
        }
    }

    @Nested
    @DisplayName(
            "Rule 8: stop and wait say what to leave; priors never lengthen a step; the mixture is not leaner than the peak")
    class Leave {
        @Test
        @DisplayName("8: an engine that knocked in every pull is left retarded below its bans")
        void afterKnockInEveryPullTheRetreatIsNamed() {
            Pulls day = new Pulls().knocked(20, 0.84, 190);
            Chosen left = timing(day).chosen().orElseThrow();

            assertThat(left.by()).isEqualTo(ChosenBy.KNOCK_LIMIT);
            assertThat(left.setting().advance().orElseThrow().deg()).isLessThan(18);
        }

        @ParameterizedTest
        @ValueSource(doubles = {1e-5, 1e-4, 1e-3, 5e-3})
        @DisplayName("8: what earlier days taught never lengthens a step or moves the start")
        void learnedPriorsNeverLengthenAStep(double curvature) {
            Experience experience = LearnedStepTest.taught(curvature, 17, 4);
            Verdict first = learned(new Pulls(), experience);
            assertThat(advanceOf(first)).isEqualTo(20);
            assertThat(lambdaOf(first)).isEqualTo(0.84);
            assertThat(advanceOf(learned(new Pulls().clean(20, 0.84, 190), experience)))
                    .isLessThanOrEqualTo(22);
            assertThat(advanceOf(learned(climb(), experience))).isLessThanOrEqualTo(24);
        }

        private Verdict learned(Pulls day, Experience experience) {
            return Advisor.judge(new Day(
                    Pulls.bothFactors(), day.list(), Set.of(), Optional.of(experience), PresentConditions.unknown()));
        }

        @ParameterizedTest
        @ValueSource(longs = {81, 82, 83, 84})
        @DisplayName("8: the chosen mixture is not leaner than the peak of its curve")
        void theChosenMixtureIsNotLeanerThanThePeak(long seed) {
            SimulatedDay day =
                    new SimulatedDay(Pulls.bothFactors(), new SimulatedDay.Truth(26, 0.86, 99, 0.2, true), seed).run();
            Verdict verdict = both(new Pulls().addAll(day.pulls()));
            OptionalDouble peak = verdict.mixture()
                    .flatMap(SweepAnswer::optimum)
                    .map(optimum -> OptionalDouble.of(optimum.peak()))
                    .orElse(OptionalDouble.empty());

            assertThat(verdict.chosen()
                            .orElseThrow()
                            .setting()
                            .lambda()
                            .orElseThrow()
                            .value())
                    .isLessThanOrEqualTo(peak.orElse(0.94) + 1e-9);
        }
    }
}
