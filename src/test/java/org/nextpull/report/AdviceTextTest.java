package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.ChosenBy;
import org.nextpull.advice.EarlierStop;
import org.nextpull.advice.Factor;
import org.nextpull.advice.Ignition;
import org.nextpull.advice.PlannerDecision;
import org.nextpull.advice.Reason;
import org.nextpull.advice.WaitFor;
import org.nextpull.channel.EngineSetting;
import org.nextpull.fit.TorqueLeft;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.UnitSystem;

class AdviceTextTest {
    private static final EngineSetting SETTING =
            EngineSetting.ofNumbers(Optional.of(Advance.ofDeg(26)), Optional.empty(), Optional.of(Lambda.of(0.87)));
    private static final Chosen.Proof PROVEN =
            new Chosen.Proof(List.of(Factor.TIMING, Factor.MIXTURE), List.of(), 0, Chosen.Standing.PROVEN);
    private static final Chosen LEFT = new Chosen(SETTING, ChosenBy.PEAK, PROVEN);

    private static Reason searching(Ignition ignition, PlannerDecision.Purpose purpose) {
        return new Reason.Searching(ignition, purpose, 5, new TorqueLeft(0.31, 0.12), 0.25, true, Optional.empty());
    }

    private static Reason reason(AdviceCode code) {
        return switch (code) {
            case BASELINE -> new Reason.First(Ignition.FLAT, 0);
            case CLIMB_TIMING -> searching(Ignition.FLAT, PlannerDecision.Purpose.CLIMB);
            case BRACKET_TIMING -> searching(Ignition.MAP, PlannerDecision.Purpose.BRACKET_BELOW);
            case LOOK_AGAIN -> searching(Ignition.MAP, PlannerDecision.Purpose.LOOK_AGAIN);
            case EXPLORE -> searching(Ignition.OFFSET, PlannerDecision.Purpose.EXPLORE);
            case CLIMB_MIXTURE, BRACKET_MIXTURE, RICH_STEP ->
                searching(Ignition.STANDING, PlannerDecision.Purpose.EXPLORE);
            case CONFIRM -> searching(Ignition.FLAT, PlannerDecision.Purpose.PROVE);
            case CHANGE_OVER ->
                new Reason.ChangeOver(
                        "alcohol",
                        Optional.of("e85"),
                        Optional.of(new Reason.Flow(1.37, OptionalDouble.of(0.96), 0.85)));
            case DECIDE -> new Reason.Deciding("alcohol", 3, 12);
            case DECIDED -> new Reason.Decided("alcohol", true);
            case OUT_OF_WINDOW ->
                new Reason.OutOfWindow(WaitFor.Condition.COOLANT, Temperature.ofCelsius(70), Temperature.ofCelsius(78));
            case NOT_WATCHED -> new Reason.NotWatched(List.of(Limit.EXHAUST, Limit.FUEL_PRESSURE), true);
            case COOL_EXHAUST -> new Reason.LimitReached(Limit.EXHAUST, 4, 1193.15, 1173.15);
            case TOO_LEAN -> new Reason.LimitReached(Limit.LEAN, 4, 0.97, 0.95);
            case LIMIT_MET -> new Reason.LimitReached(Limit.OIL_PRESSURE, 4, 180_000, 250_000);
            case SETTLED, SCATTER_LIMITED, KNOCK_LIMITED, PLAN_LIMIT, BUDGET ->
                new Reason.Ended(Ignition.FLAT, 9, new TorqueLeft(0.31, 0.12), 0.25);
        };
    }

    static Advice advice(AdviceCode code) {
        Action action = code.isStop()
                ? Action.STOP
                : switch (code) {
                    case OUT_OF_WINDOW, COOL_EXHAUST, NOT_WATCHED -> Action.WAIT;
                    default -> Action.PULL;
                };
        Optional<WaitFor> wait = action == Action.WAIT
                ? Optional.of(new WaitFor(
                        WaitFor.Condition.COOLANT, Temperature.ofCelsius(70), Temperature.ofCelsius(78), 90))
                : Optional.empty();
        return new Advice(
                action,
                code,
                action == Action.STOP ? Optional.empty() : Optional.of(SETTING),
                reason(code),
                wait,
                Optional.of(LEFT));
    }

    private static List<String> inBothUnits(Advice advice) {
        List<String> said = new ArrayList<>();
        for (UnitSystem units : UnitSystem.values()) {
            AdviceText text = new AdviceText(new Shown(units));
            said.add(text.headline(advice) + (text.headline(advice).endsWith(".") ? " " : ". ") + text.because(advice));
        }
        return said;
    }

    @ParameterizedTest
    @EnumSource(AdviceCode.class)
    void everyAdviceIsWholeSentencesThatPromiseNothing(AdviceCode code) {
        assertThat(inBothUnits(advice(code))).allSatisfy(said -> {
            assertThat(said).endsWith(".").doesNotContain("  ", "..", "null", "Optional", "NaN");
            assertThat(ForbiddenWords.in(said)).isEmpty();
        });
    }

    /** Where knock decides everywhere, a pull up to its margin is no search for the peak. */
    @Test
    void aPullUpToKnockNamesKnockAsItsReason() {
        Advice up = new Advice(
                Action.PULL,
                AdviceCode.BRACKET_TIMING,
                Optional.of(SETTING),
                searching(Ignition.FLAT, PlannerDecision.Purpose.UP_TO_KNOCK),
                Optional.empty(),
                Optional.empty());
        assertThat(inBothUnits(up))
                .allSatisfy(said -> assertThat(said)
                        .contains("Knock decides, not the peak", "still to find within what knock leaves")
                        .doesNotContain("likely best"));
    }

    @Test
    void afterHeldSpeedsTheShortReasonSaysHowManyPullsTheirMapTakes() {
        Reason rises = new Reason.Searching(
                Ignition.MAP,
                PlannerDecision.Purpose.CLIMB,
                16,
                new TorqueLeft(0.31, 0.12),
                0.25,
                false,
                Optional.of(new Reason.Searching.Rise(3, 4)));
        Advice climb = new Advice(
                Action.PULL, AdviceCode.CLIMB_TIMING, Optional.of(SETTING), rises, Optional.empty(), Optional.empty());
        AdviceText words = new AdviceText(new Shown(UnitSystem.METRIC));
        assertThat(words.brief(climb))
                .isEqualTo("About 3 pulls: a speed that was not held rises by at most 4.0 deg a pull.");
        assertThat(words.because(climb)).startsWith("Torque still rises").endsWith(words.brief(climb));
    }

    /** A setting that was run and is as good stands beside the stated best: then it is not called that. */
    @ParameterizedTest
    @CsvSource({"0, That is MBT", "0.5, That is 0.5 deg above MBT", "-1, That is 1.0 deg below MBT"})
    void whatStaysIsCalledTheBestOnlyWhereItIs(double besideDeg, String said) {
        Chosen.Proof proof = new Chosen.Proof(List.of(Factor.TIMING), List.of(), besideDeg, Chosen.Standing.PROVEN);
        assertThat(AdviceText.by(new Chosen(SETTING, ChosenBy.PEAK, proof))).isEqualTo(said + ".");
    }

    @ParameterizedTest
    @EnumSource(AdviceCode.class)
    void stopAndWaitSayWhatToLeaveAndTheRestWhatToSet(AdviceCode code) {
        Advice advice = advice(code);
        boolean leaves = advice.action() == Action.STOP || advice.action() == Action.WAIT;
        assertThat(inBothUnits(advice)).allSatisfy(said -> {
            assertThat(said).contains("26.0 deg, lambda 0.870");
            assertThat(said.contains("Final setting: 26.0 deg") || said.contains("Until then leave 26.0 deg"))
                    .isEqualTo(leaves);
        });
    }

    /** "The stop no longer stands" beside STOP would contradict it. */
    @Test
    void aStopAfterANewSettingReplacesTheOneBefore() {
        EarlierStop stop = new EarlierStop(
                6, 1, Optional.of(new EarlierStop.Reopening(EarlierStop.Cause.NEW_SETTING, OptionalInt.of(7))));
        assertThat(StopText.sentence(stop, true)).endsWith("this stop takes the place of the one after pull 6.");
        assertThat(StopText.sentence(stop, false)).endsWith("the stop after pull 6 no longer stands.");
    }

    @Test
    void withoutACleanPullTheEngineKeepsTheSettingItCameWith() {
        for (AdviceCode code : List.of(AdviceCode.LIMIT_MET, AdviceCode.OUT_OF_WINDOW)) {
            Advice known = advice(code);
            Advice advice = new Advice(
                    known.action(), code, known.setting(), known.reason(), known.waitFor(), Optional.empty());
            assertThat(inBothUnits(advice))
                    .allSatisfy(said ->
                            assertThat(said).contains("No clean setting was run. Go back to the original map."));
        }
    }

    @Test
    void theNumbersBehindAnAdviceAreInItsSentence() {
        assertThat(inBothUnits(advice(AdviceCode.CLIMB_TIMING)))
                .allSatisfy(said -> assertThat(said)
                        .contains("after 5 pulls", "0.25 %", "0.31 %")
                        .contains("listen during this pull"));
        assertThat(inBothUnits(advice(AdviceCode.BRACKET_MIXTURE)))
                .allSatisfy(said -> assertThat(said).contains("This mixture tells most about the peak"));
        assertThat(inBothUnits(advice(AdviceCode.CONFIRM)).get(0)).contains("Confirm the final setting.");
    }

    @Test
    void torqueTooLittleToShowIsNotSaidToBeNone() {
        Advice known = advice(AdviceCode.KNOCK_LIMITED);
        Reason little = new Reason.Ended(Ignition.FLAT, 9, new TorqueLeft(0.004, 0.001), 0.25);
        Advice advice =
                new Advice(known.action(), known.code(), known.setting(), little, known.waitFor(), Optional.empty());
        assertThat(inBothUnits(advice))
                .allSatisfy(said ->
                        assertThat(said).contains("Under 0.01 % of torque").doesNotContain("0.00 %"));
    }

    @Test
    void temperaturesAndPressuresAreInTheUnitsOfTheReader() {
        List<String> hot = inBothUnits(advice(AdviceCode.COOL_EXHAUST));
        assertThat(hot.get(0)).contains("920 °C", "900 °C");
        assertThat(hot.get(1)).contains("1688 °F", "1652 °F");
        List<String> oil = inBothUnits(advice(AdviceCode.LIMIT_MET));
        assertThat(oil.get(0)).contains("Oil pressure 180.0 kPa, limit 250.0 kPa");
        assertThat(oil.get(1)).contains("26.1 psi", "36.3 psi");
    }

    @Test
    void anExhaustTooHotIsNeverAnsweredByRetard() {
        assertThat(inBothUnits(advice(AdviceCode.COOL_EXHAUST)))
                .allSatisfy(said -> assertThat(said).contains("Let it cool", "richer", "Do not retard"));
    }

    @Test
    void anExhaustThatMoreAdvanceCoolsIsNotSaidToBeAnsweredByARicherPull() {
        Advice richer = advice(AdviceCode.COOL_EXHAUST);
        Advice cooled = new Advice(
                richer.action(),
                richer.code(),
                Optional.of(
                        EngineSetting.ofNumbers(Optional.of(Advance.ofDeg(22)), Optional.empty(), Optional.empty())),
                richer.reason(),
                richer.waitFor(),
                richer.leave());
        assertThat(inBothUnits(cooled))
                .allSatisfy(said ->
                        assertThat(said).contains("Next pull: more advanced").doesNotContain("pull: richer"));
    }

    /** The gate may have changed the advance, or gone richer by more than a step: the sentence claims neither. */
    @ParameterizedTest
    @EnumSource(
            value = AdviceCode.class,
            names = {"COOL_EXHAUST", "TOO_LEAN"})
    void aRicherPullIsNotSaidToBeAtTheSameAdvanceOrByOneStep(AdviceCode code) {
        assertThat(inBothUnits(advice(code)))
                .allSatisfy(said -> assertThat(said).doesNotContain("same advance", "one step"));
    }

    @Test
    void whatNothingWatchesIsNamedWithWhatToDo() {
        assertThat(inBothUnits(advice(AdviceCode.NOT_WATCHED)).get(0))
                .contains("exhaust temperature and fuel pressure", "say so (unwatched)");
    }

    @Test
    void aTemperatureOutOfItsWindowIsSaidWithItsDirection() {
        assertThat(inBothUnits(advice(AdviceCode.OUT_OF_WINDOW)).get(0)).contains("needs at least 78 °C", "Min 90 s");
        Reason hot =
                new Reason.OutOfWindow(WaitFor.Condition.OIL, Temperature.ofCelsius(130), Temperature.ofCelsius(115));
        Advice known = advice(AdviceCode.OUT_OF_WINDOW);
        Advice advice = new Advice(known.action(), known.code(), known.setting(), hot, known.waitFor(), known.leave());
        assertThat(inBothUnits(advice).get(0)).contains("Oil 130 °C, needs at most 115 °C");
    }

    @ParameterizedTest
    @EnumSource(Limit.class)
    void everyLimitHasANameAndAUnit(Limit limit) {
        Advice known = advice(AdviceCode.LIMIT_MET);
        Advice advice = new Advice(
                Action.STOP,
                AdviceCode.LIMIT_MET,
                Optional.empty(),
                new Reason.LimitReached(limit, 4, 3, 1),
                Optional.empty(),
                known.leave());
        assertThat(inBothUnits(advice)).allSatisfy(said -> assertThat(said).contains(", in pull 4."));
    }

    @Test
    void knockThatLeavesNoSettingSaysWhatCanBeDone() {
        Advice advice = new Advice(
                Action.STOP,
                AdviceCode.KNOCK_LIMITED,
                Optional.empty(),
                new Reason.Knocked(1, 20, 2),
                Optional.empty(),
                Optional.empty());
        assertThat(inBothUnits(advice)).allSatisfy(said -> {
            assertThat(said).contains("pull 1 at 20.0 deg", "2.0 deg margin", "lower least_deg");
            assertThat(ForbiddenWords.in(said)).isEmpty();
        });
    }

    @Test
    void whatChoseTheSettingIsSaid() {
        assertThat(Arrays.stream(ChosenBy.values())
                        .map(by -> AdviceText.leave(new Chosen(SETTING, by, PROVEN)))
                        .distinct())
                .hasSameSizeAs(ChosenBy.values())
                .allSatisfy(said -> assertThat(said).startsWith("Final setting: 26.0 deg, lambda 0.870. "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-0.5 | That is 0.5 deg below the knock-limited advance: knock decides, not the peak.",
                "0 | Knock-limited: knock decides, not the peak.",
                "0.5 | Knock-limited: knock decides, not the peak."
            })
    void aKnockLimitedSettingSaysHowFarBelowItStays(double besideDeg, String said) {
        Chosen.Proof proof = new Chosen.Proof(List.of(), List.of(), besideDeg, Chosen.Standing.PROVEN);
        assertThat(AdviceText.by(new Chosen(SETTING, ChosenBy.KNOCK_LIMIT, proof)))
                .isEqualTo(said);
    }
}
