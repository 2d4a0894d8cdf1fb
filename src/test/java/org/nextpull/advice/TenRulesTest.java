package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Temperature;

/** The rules that keep an engine alive, each through the advice of a day. */
class TenRulesTest {

    static Verdict both(Pulls day) {
        return SimulatedDay.judge(Pulls.bothFactors(), day.list());
    }

    static Verdict timing(Pulls day) {
        return SimulatedDay.judge(Pulls.timingOnly(), day.list());
    }

    static Verdict lifted(SweepPlan plan, Pulls day, Integer... numbers) {
        return SimulatedDay.judge(plan, day.list(), Set.of(numbers), PresentConditions.unknown());
    }

    static double advanceOf(Verdict verdict) {
        return verdict.advice()
                .setting()
                .flatMap(EngineSetting::advance)
                .orElseThrow()
                .deg();
    }

    static double lambdaOf(Verdict verdict) {
        return verdict.advice()
                .setting()
                .flatMap(EngineSetting::lambda)
                .orElseThrow()
                .value();
    }

    /** Torque still rises by 2 % a step of two degrees. */
    static Pulls climb() {
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
            Pulls cutShort = climb().clean(24, 0.84, 197).standing(MeasuredPull.Status.CUT_SHORT);
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
            EngineSetting left = both(new Pulls().clean(22.3, 0.853, 190))
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
                value = MeasuredPull.Status.class,
                names = {"CUT_SHORT", "REFUSED", "STRUCK", "THROWN_AWAY"})
        @DisplayName("2: knock forbids although the pull does not count")
        void knockForbidsAlthoughThePullDoesNotCount(MeasuredPull.Status standing) {
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
                    .standing(MeasuredPull.Status.STRUCK)
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
            Pulls day = climb().fuel("ethanol").clean(26, 0.84, 193).standing(MeasuredPull.Status.CUT_SHORT);

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
}
