package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.nextpull.fit.Belief;
import org.nextpull.fit.Experience;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.PullStatus;
import org.nextpull.scatter.Repeatability;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Temperature;

/** The rules that keep an engine alive, each through the advice of a day. */
class TenRulesTest {
    private static final double HOT_K = 1200;
    private static final double ALLOWED_K = 1150;

    private static Verdict both(Pulls day) {
        return SimulatedDay.judge(Pulls.bothFactors(), day.list());
    }

    private static Verdict timing(Pulls day) {
        return SimulatedDay.judge(Pulls.timingOnly(), day.list());
    }

    private static Verdict lifted(SweepPlan plan, Pulls day, Integer... numbers) {
        return SimulatedDay.judge(plan, day.list(), Set.of(numbers), PresentConditions.unknown());
    }

    private static double advanceOf(Verdict verdict) {
        return verdict.advice()
                .setting()
                .flatMap(Proposal::advance)
                .orElseThrow()
                .deg();
    }

    private static double lambdaOf(Verdict verdict) {
        return verdict.advice()
                .setting()
                .flatMap(Proposal::lambda)
                .orElseThrow()
                .value();
    }

    /** Torque still rises by 2 % a step of two degrees. */
    private static Pulls climb() {
        return new Pulls().clean(20, 0.84, 190).clean(20, 0.84, 190.2).clean(22, 0.84, 194);
    }

    @Nested
    @DisplayName(
            "Rule 1: never outside the plan, rounded toward retard and rich, one step from the most daring clean pull")
    class Steps {
        @Test
        @DisplayName("1: a first pull outside the plan is not run again")
        void aPullOutsideThePlanIsNotRepeated() {
            Verdict verdict = both(new Pulls().clean(40, 0.97, 190));

            assertThat(advanceOf(verdict)).isBetween(12.0, 36.0);
            assertThat(lambdaOf(verdict)).isBetween(0.78, 0.94);
            assertThat(verdict.chosen())
                    .as("nothing outside the plan is left in the engine")
                    .isEmpty();
        }

        @Test
        @DisplayName("1: a climb goes one step, and from a clean pull that counts")
        void aClimbIsOneStepFromThePullThatWasClean() {
            assertThat(advanceOf(timing(climb()))).isLessThanOrEqualTo(24);
            Pulls cutShort = climb().clean(24, 0.84, 197).standing(PullStatus.CUT_SHORT);
            assertThat(advanceOf(timing(cutShort))).isLessThanOrEqualTo(24);
            Pulls limited = climb().limited(24, 0.84, Limit.OIL, 400, 390);
            assertThat(advanceOf(timing(limited))).isLessThanOrEqualTo(24);
        }

        @Test
        @DisplayName("1: a plan whose limit is between two settings ends on the retarded one")
        void theLimitOfThePlanIsRoundedTowardRetard() {
            SweepPlan plan = Pulls.plan("""
                    [timing]
                    start_deg = 20
                    least_deg = 12
                    most_deg = 25.3
                    """);
            SimulatedDay day = new SimulatedDay(plan, new SimulatedDay.Truth(40, 0.87, 99, 0.1, true), 5).run();

            assertThat(day.pulls())
                    .allSatisfy(pull -> assertThat(
                                    pull.setting().advance().orElseThrow().deg())
                            .isLessThanOrEqualTo(25));
            assertThat(day.last().code()).isEqualTo(AdviceCode.PLAN_LIMIT);
            assertThat(day.last()
                            .leave()
                            .orElseThrow()
                            .setting()
                            .advance()
                            .orElseThrow()
                            .deg())
                    .isBetween(24.5, 25.0);
        }

        @Test
        @DisplayName("1: what stays in the engine is rounded toward retard and rich")
        void whatIsLeftIsRoundedDown() {
            Proposal left = both(new Pulls().clean(22.3, 0.853, 190))
                    .chosen()
                    .orElseThrow()
                    .setting();

            assertThat(left.advance().orElseThrow().deg()).isEqualTo(22.5);
            assertThat(left.lambda().orElseThrow().value()).isEqualTo(0.85);
        }
    }

    @Nested
    @DisplayName("Rule 2: a pull without response keeps its knock and limits until the operator lifts them by number")
    class Events {
        @ParameterizedTest
        @EnumSource(
                value = PullStatus.class,
                names = {"CUT_SHORT", "REFUSED", "STRUCK", "THROWN_AWAY"})
        @DisplayName("2: knock forbids although the pull does not count")
        void knockForbidsAlthoughThePullDoesNotCount(PullStatus standing) {
            Pulls day = climb().knocked(24, 0.84, 197).standing(standing);
            Verdict verdict = timing(day);

            assertThat(verdict.timing().orElseThrow().pulls()).containsExactly(1, 2, 3);
            assertThat(verdict.advice().setting().map(any -> advanceOf(verdict)).orElse(0.0))
                    .isLessThan(22);
            assertThat(verdict.timing().orElseThrow().limit()).hasValue(22);
            assertThat(advanceOf(lifted(Pulls.timingOnly(), day, 4))).isGreaterThanOrEqualTo(22);
        }

        @ParameterizedTest
        @EnumSource(
                value = Limit.class,
                names = {"OIL_PRESSURE", "FUEL_PRESSURE", "BOOST", "SPEED", "INJECTOR_DUTY"})
        @DisplayName("2: a limit that ends the day ends it for all pulls that follow")
        void aLimitThatEndsTheDayIsLiftedByNumberOnly(Limit limit) {
            Pulls day = climb().limited(24, 0.84, limit, 3, 2)
                    .standing(PullStatus.STRUCK)
                    .clean(22, 0.84, 194);

            assertThat(timing(day).advice().code()).isEqualTo(AdviceCode.LIMIT_MET);
            assertThat(((Reason.LimitReached) timing(day).advice().reason()).pull())
                    .isEqualTo(4);
            assertThat(lifted(Pulls.timingOnly(), day, 3).advice().code()).isEqualTo(AdviceCode.LIMIT_MET);
            assertThat(lifted(Pulls.timingOnly(), day, 4).advice().action()).isNotEqualTo(Action.STOP);
        }

        @Test
        @DisplayName("2: a setting at which a limit was met is not named again")
        void aSettingAtWhichALimitWasMetIsNotNamedAgain() {
            Pulls day = new Pulls().limited(20, 0.84, Limit.COOLANT, 390, 380);
            PresentConditions cooled = new PresentConditions(
                    Optional.of(Temperature.ofKelvins(355)), Optional.empty(), Optional.empty(), Optional.empty());
            Verdict verdict = SimulatedDay.judge(Pulls.timingOnly(), day.list(), Set.of(), cooled);

            assertThat(verdict.advice().action()).isEqualTo(Action.PULL);
            assertThat(advanceOf(verdict)).isLessThan(20);
        }
    }

    @Nested
    @DisplayName("Rule 3: knock forbids a margin below, leaner, and on that fuel; a change starts again below it")
    class Knock {
        @Test
        @DisplayName("3: the margin is kept at that mixture and leaner, and the lift of a lower pull changes nothing")
        void theMarginIsKept() {
            Pulls day = climb().clean(24, 0.84, 197).knocked(26, 0.84, 199);

            assertThat(timing(day).advice().leave().isEmpty()
                            || timing(day)
                                            .advice()
                                            .leave()
                                            .get()
                                            .setting()
                                            .advance()
                                            .orElseThrow()
                                            .deg()
                                    < 24)
                    .isTrue();
            assertThat(timing(day)
                            .advice()
                            .setting()
                            .map(any -> advanceOf(timing(day)))
                            .orElse(0.0))
                    .isLessThan(24);
            assertThat(timing(day)
                            .chosen()
                            .orElseThrow()
                            .setting()
                            .advance()
                            .orElseThrow()
                            .deg())
                    .as("24 deg was clean but lies within the margin")
                    .isLessThan(24);
        }

        @Test
        @DisplayName("3: knock in a stretch that is no pull forbids as in a pull, and counts for no pull")
        void knockOutsideAPullForbids() {
            Pulls day = climb().clean(24, 0.84, 197).knockedOutsideAPull(25, 0.84);

            assertThat(timing(day)
                            .advice()
                            .setting()
                            .map(any -> advanceOf(timing(day)))
                            .orElse(0.0))
                    .as("25 less the margin of 2 is forbidden")
                    .isLessThan(23);
            assertThat(timing(day).timing().orElseThrow().pulls()).doesNotContain(day.count());
        }

        @Test
        @DisplayName("3: after an exhaust that was too hot, knock outside a pull does not make the heat forgotten")
        void knockOutsideAPullHidesNoLimit() {
            Pulls hot = climb().limited(24, 0.84, Limit.EXHAUST, 1190, 1150).knockedOutsideAPull(20, 0.84);

            assertThat(both(hot).advice().code()).isEqualTo(AdviceCode.COOL_EXHAUST);
        }

        @Test
        @DisplayName("3: knock in a richer mixture forbids here too, and knock in a leaner one at least its margin")
        void knockForbidsAtOtherMixtures() {
            Pulls richerKnock = climb().knockedAndCut(24, 0.80).clean(22, 0.84, 194);
            Pulls leanerKnock = climb().knockedAndCut(24, 0.88).clean(22, 0.84, 194);

            assertThat(both(richerKnock)
                            .advice()
                            .setting()
                            .map(any -> advanceOf(both(richerKnock)))
                            .orElse(0.0))
                    .isLessThan(22);
            assertThat(advanceOf(both(leanerKnock))).isLessThan(22);
        }

        @Test
        @DisplayName("3: on a measured mixture that scatters the ban holds for the whole sweep")
        void theBanHoldsForMixturesThatCountAsOne() {
            Pulls day = new Pulls()
                    .measuredOnly()
                    .clean(20, 0.838, 190)
                    .clean(20, 0.842, 190.2)
                    .clean(22, 0.840, 194)
                    .knocked(24, 0.852, 196);

            assertThat(both(day)
                            .advice()
                            .setting()
                            .map(any -> advanceOf(both(day)))
                            .orElse(0.0))
                    .isLessThan(22);
        }

        @ParameterizedTest
        @ValueSource(strings = {"fuel", "label"})
        @DisplayName("3: a change starts again at the lesser of the start and the day's lowest ban less the margin")
        void aChangeStartsAgainBelowTheDaysLowestBan(String change) {
            Pulls day = climb().knocked(23, 0.84, 195);
            Pulls changed = change.equals("fuel") ? day.fuel("ethanol") : day.label("other manifold");
            Verdict verdict = timing(changed.clean(22, 0.84, 193));

            // knock at 23 forbids 21 and above; two more below that
            assertThat(verdict.advice().code()).isEqualTo(AdviceCode.BASELINE);
            assertThat(advanceOf(verdict)).isEqualTo(19);
            assertThat(verdict.timing().orElseThrow().pulls()).containsExactly(5);
        }

        @Test
        @DisplayName("3: a change after a day without knock starts where the plan starts")
        void aChangeWithoutKnockStartsAtTheStart() {
            Pulls day = climb().fuel("ethanol").clean(26, 0.84, 193).standing(PullStatus.CUT_SHORT);

            assertThat(timing(day).advice().code()).isEqualTo(AdviceCode.BASELINE);
            assertThat(advanceOf(timing(day))).isEqualTo(20);
        }

        @Test
        @DisplayName("3: knock on one fuel forbids nothing on another but the start")
        void knockOnAnotherFuelForbidsNothing() {
            Pulls day = climb().knocked(23, 0.84, 195)
                    .fuel("ethanol")
                    .clean(19, 0.84, 188)
                    .clean(19, 0.84, 188.3)
                    .clean(21, 0.84, 192)
                    .clean(23, 0.84, 196);

            assertThat(advanceOf(timing(day))).isGreaterThanOrEqualTo(23);
            assertThat(timing(day).timing().orElseThrow().limit()).isEmpty();
        }
    }

    @Nested
    @DisplayName("Rule 4: where knock is not measured the operator listens, and steps halve far above the start")
    class Unheard {
        private Pulls far(boolean heard) {
            Pulls day = new Pulls();
            double[] advances = {20, 20, 22, 24, 26};
            double[] torques = {180, 180.2, 184, 188, 192};
            for (int index = 0; index < advances.length; index++) {
                if (heard) {
                    day.clean(advances[index], 0.84, torques[index]);
                } else {
                    day.unheard(advances[index], 0.84, torques[index]);
                }
            }
            return day;
        }

        @Test
        @DisplayName("4: beyond 6 deg above the start the step halves, else it is whole")
        void theStepHalves() {
            assertThat(advanceOf(timing(far(true)))).isEqualTo(28);
            assertThat(advanceOf(timing(far(false)))).isEqualTo(27);
        }

        @Test
        @DisplayName("4: each step asks the operator to listen, until knock is measured")
        void eachStepAsksToListen() {
            assertThat(((Reason.Searching) timing(far(false)).advice().reason()).listen())
                    .isTrue();
            assertThat(((Reason.Searching) timing(far(true)).advice().reason()).listen())
                    .isFalse();
            assertThat(far(false).list())
                    .noneMatch(pull -> pull.knock().isMeasured() || pull.knock().isHeard());
        }
    }

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
            assertThat(asked.setting().flatMap(Proposal::advance).orElseThrow().deg())
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
            assertThat(advice.setting().flatMap(Proposal::advance).orElseThrow().deg())
                    .isEqualTo(24);
            assertThat(advice.setting().flatMap(Proposal::lambda).orElseThrow().value())
                    .isCloseTo(0.805, org.assertj.core.data.Offset.offset(1e-9));
            WaitFor wait = advice.waitFor().orElseThrow();
            assertThat(wait.condition()).isEqualTo(Condition.EXHAUST);
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

            assertWait(plan, new PresentConditions(cold, right, mild, Optional.empty()), Condition.COOLANT, 80);
            assertWait(plan, new PresentConditions(right, hot, mild, Optional.empty()), Condition.OIL, 105);
            assertWait(plan, new PresentConditions(right, right, cold, Optional.empty()), Condition.INLET_AIR, 35);
            Verdict ready = SimulatedDay.judge(
                    plan, climb().list(), Set.of(), new PresentConditions(right, right, mild, Optional.empty()));
            assertThat(ready.advice().action()).isEqualTo(Action.PULL);
        }

        private void assertWait(SweepPlan plan, PresentConditions now, Condition condition, double wantC) {
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
                            .flatMap(Proposal::lambda)
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
            Experience experience = new Experience(
                    Optional.of(new Belief(Math.log(curvature), 0.1)),
                    Optional.of(new Belief(Math.log(curvature), 0.1)),
                    Optional.empty(),
                    4);
            Verdict first = learned(new Pulls(), experience);
            assertThat(advanceOf(first)).isEqualTo(20);
            assertThat(lambdaOf(first)).isEqualTo(0.84);
            assertThat(advanceOf(learned(new Pulls().clean(20, 0.84, 190), experience)))
                    .isLessThanOrEqualTo(22);
            assertThat(advanceOf(learned(climb(), experience))).isLessThanOrEqualTo(24);
        }

        private Verdict learned(Pulls day, Experience experience) {
            return Advisor.judge(new Day(
                    Pulls.bothFactors(),
                    day.list(),
                    Set.of(),
                    Repeatability.unknown(),
                    Optional.of(experience),
                    PresentConditions.unknown()));
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
