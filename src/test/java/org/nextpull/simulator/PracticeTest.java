package org.nextpull.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.Action;
import org.nextpull.advice.ChosenBy;
import org.nextpull.advice.HoldNow;
import org.nextpull.advice.Reason;
import org.nextpull.channel.EngineSetting;
import org.nextpull.chart.SpeedPlot;
import org.nextpull.chart.SpeedPlots;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.report.Shown;
import org.nextpull.report.html.Sheet;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.Replay;
import org.nextpull.unit.Advance;
import org.nextpull.unit.UnitSystem;

class PracticeTest {
    private static final String BOTH = """
            [engine]
            displacement_l = 1.6
            cylinders = 4
            compression_ratio = 10.5
            [band]
            from_rpm = 4000
            to_rpm = 6000
            rows_every_rpm = 1000
            [timing]
            start_deg = 20
            least_deg = 14
            most_deg = 36
            [mixture]
            start_lambda = 0.86
            richest_lambda = 0.80
            leanest_lambda = 0.94
            [limits]
            knock_events = 1
            """;

    private static SweepPlan plan(String text) {
        return PlanText.read(text, "plan.toml").value().orElseThrow();
    }

    private static EngineSetting advance(double deg) {
        return EngineSetting.ofNumbers(Optional.of(Advance.ofDeg(deg)), Optional.empty(), Optional.empty());
    }

    @Test
    void theEngineHasTheSizeThatThePlanNames() {
        SimulatedEngine rig = SimulatedEngine.of(plan(BOTH), 1).value().orElseThrow();
        assertThat(rig.engine().design().displacement()).isCloseTo(1.6e-3, within(1e-9));
        assertThat(rig.engine().design().cylinders()).isEqualTo(4);
        assertThat(rig.engine().design().cylinder().drive().compressionRatio()).isEqualTo(10.5);
        assertThat(rig.engine().design().boost().full().pascals()).isZero();
        SimulatedEngine charged = SimulatedEngine.of(plan(BOTH.replace("cylinders = 4", "induction = \"boosted\"")), 1)
                .value()
                .orElseThrow();
        assertThat(charged.engine().design().boost().full().pascals()).isPositive();
    }

    @Test
    void aLimitIsChangedAndANoteKeptBeforeTheFirstPull() {
        Practice day = Practice.start(plan(BOTH), 1).value().orElseThrow();
        assertThat(day.take(new OperatorAction.ChangeLimit("exhaust_c", 850))).isEmpty();
        assertThat(day.take(new OperatorAction.Note(OptionalInt.of(1), "rain"))).isEmpty();
        assertThat(day.result().plan().limits().most().exhaust()).isPresent();
        assertThat(day.take(new OperatorAction.Restore(1)).get(0).code()).isEqualTo(FindingCode.LIVE_PULL_UNKNOWN);
    }

    @Test
    void anotherSeedHidesAnotherTruth() {
        SimulatedEngine one = SimulatedEngine.of(plan(BOTH), 1).value().orElseThrow();
        SimulatedEngine again = SimulatedEngine.of(plan(BOTH), 1).value().orElseThrow();
        SimulatedEngine other = SimulatedEngine.of(plan(BOTH), 2).value().orElseThrow();
        assertThat(again.truth()).isEqualTo(one.truth());
        assertThat(Math.abs(other.truth().peak().deg() - one.truth().peak().deg()))
                .isGreaterThan(0.05);
        assertThat(other.day().scatter().torque())
                .isNotEqualTo(one.day().scatter().torque());
        assertThat(other.benchSeed()).isNotEqualTo(one.benchSeed());
    }

    @Test
    void aDayThatFollowsTheAdviceEndsNearTheTruth() {
        Practice practice = Practice.start(plan(BOTH), 4).value().orElseThrow();
        while (practice.advice().action() != Action.STOP) {
            assertThat(practice.pulls()).isLessThan(30);
            practice.pull(practice.advice().setting().orElseThrow());
        }
        Debrief debrief = practice.debrief();
        assertThat(debrief.pulls()).isEqualTo(practice.pulls());
        assertThat(debrief.torqueLeftPercent().orElseThrow()).isLessThan(0.8);
        assertThat(Math.abs(debrief.degreesOff().orElseThrow())).isLessThan(4);
        assertThat(Math.abs(debrief.lambdaOff().orElseThrow())).isLessThan(0.05);
    }

    @Test
    void whoLeavesTheStartLeavesTorque() {
        Practice practice = Practice.start(plan(BOTH), 4).value().orElseThrow();
        practice.pull(advance(14));
        Debrief debrief = practice.debrief();
        assertThat(debrief.left().orElseThrow().advanceDeg()).isEqualTo(14);
        assertThat(debrief.torqueLeftPercent().orElseThrow()).isGreaterThan(2);
        assertThat(debrief.degreesOff().orElseThrow()).isNegative();
    }

    @Test
    void knockIsCountedInTheDebrief() {
        String hot = BOTH.replace("compression_ratio = 10.5", "compression_ratio = 14.5");
        Practice practice = Practice.start(plan(hot), 4).value().orElseThrow();
        practice.pull(advance(20));
        practice.pull(advance(34));
        Debrief debrief = practice.debrief();
        assertThat(debrief.truth().timing().onsetDeg().orElseThrow()).isLessThan(34);
        assertThat(debrief.knockingPulls()).isPositive();
    }

    @Test
    void aSettingOutsideThePlanIsNotRun() {
        Practice practice = Practice.start(plan(BOTH), 4).value().orElseThrow();
        assertThat(practice.pull(advance(50)).findings().get(0).code()).isEqualTo(FindingCode.RIG_SETTING_OUTSIDE);
        assertThat(practice.pulls()).isZero();
    }

    @Test
    void theHatchbackOnItsRollerCanBePractisedToo() {
        String roller = BOTH.substring(0, BOTH.indexOf("[timing]")) + """
                [dyno]
                kind = "chassis-inertia"
                torque_at = "wheel"
                roller_inertia_kg_m2 = 60
                engine_rev_per_roller_rev = 4.3
                inertia_in_log = false
                [mixture]
                start_lambda = 0.86
                richest_lambda = 0.80
                leanest_lambda = 0.94
                """;
        Practice practice = Practice.start(plan(roller), 4).value().orElseThrow();
        practice.pull(practice.advice().setting().orElseThrow());
        assertThat(practice.result().hasPulls()).isTrue();
        assertThat(practice.result().verdict().orElseThrow().mixture()).isPresent();
    }

    private static final String HOLD = BOTH.substring(0, BOTH.indexOf("[mixture]")) + """
            [pull]
            kind = "hold"
            hold_speeds = [4400, 5600]
            [limits]
            knock_events = 1
            """;

    private static HoldNow hold(Practice practice) {
        return practice.hold(Optional.empty()).value().orElseThrow();
    }

    @Test
    void heldSpeedsAreLedThroughAndAPullConfirmsTheirMap() {
        Practice practice = Practice.start(plan(HOLD.replace("start_deg = 20", "start_deg = 16")), 4)
                .value()
                .orElseThrow();
        Set<Double> held = new HashSet<>();
        while (practice.hold().isPresent()) {
            held.add(practice.hold().get().rpm());
            assertThat(held.size() + practice.pulls()).isLessThan(30);
            hold(practice);
        }
        assertThat(held).containsExactlyInAnyOrder(4400.0, 5600.0);
        assertThat(practice.result().pulls()).hasSizeGreaterThanOrEqualTo(8).allMatch(MeasuredPull::isHeld);
        int plateaus = practice.pulls();
        while (practice.advice().action() != Action.STOP) {
            assertThat(practice.pulls()).isLessThan(plateaus + 6);
            practice.pull(practice.advice().setting().orElseThrow());
        }
        assertThat(practice.result().found()).extracting(Finding::code).contains(FindingCode.HELD_AGAINST_PULL);
        assertThat(practice.debrief().torqueLeftPercent().orElseThrow()).isLessThan(0.6);
    }

    @Test
    void howManyPullsConfirmTheMapOfHeldSpeedsIsSaid() throws IOException {
        String text = Files.readString(Path.of("sweep-plans", "hillclimb-e10-hold.toml"));
        Practice practice = Practice.start(plan(text), 7).value().orElseThrow();
        while (practice.hold().isPresent()) {
            assertThat(practice.pulls()).isLessThan(30);
            hold(practice);
        }
        int plateaus = practice.pulls();
        Reason.Searching.Rise rise =
                ((Reason.Searching) practice.advice().reason()).rise().orElseThrow();
        assertThat(rise.stepDeg()).isEqualTo(4);
        while (practice.advice().action() != Action.STOP) {
            assertThat(practice.pulls()).isLessThan(plateaus + 6);
            practice.pull(practice.advice().setting().orElseThrow());
        }
        assertThat(practice.pulls() - plateaus).isEqualTo(rise.pulls());
        assertThat(practice.advice().leave().orElseThrow().by())
                .as("that a step ends below the peak is no limit of what stays")
                .isEqualTo(ChosenBy.PEAK);
        assertThat(Sheet.of(new Replay(practice.result(), List.of(), List.of()), new Shown(UnitSystem.METRIC)))
                .as("torque at one held speed is not that of the band")
                .contains("Spark map by speed")
                .doesNotContain("first setting");
        assertThat(SpeedPlots.of(practice.result(), UnitSystem.METRIC)
                        .orElseThrow()
                        .lines())
                .as("nor is it drawn beside pulls over the band")
                .extracting(SpeedPlot.Line::name)
                .first()
                .isEqualTo("first, pull " + (plateaus + 1));
    }

    @Test
    void anotherAdvanceThanTheOneThatIsAskedForIsAPlateauWhereItStands() {
        Practice practice = Practice.start(plan(HOLD), 4).value().orElseThrow();
        HoldNow now = practice.hold(Optional.of(Advance.ofDeg(17))).value().orElseThrow();
        assertThat(now.plateaus()).isEqualTo(1);
        assertThat(now.other().orElseThrow().askedDeg()).isEqualTo(20);
        assertThat(now.other().orElseThrow().readDeg()).isCloseTo(17, within(0.25));
        assertThat(now.advanceDeg()).hasValue(19);
        assertThat(practice.hold(Optional.of(Advance.ofDeg(26)))
                        .value()
                        .orElseThrow()
                        .step())
                .as("a step is 2 deg")
                .isEqualTo(HoldNow.Step.CLOSE_ADVANCE);
        assertThat(practice.hold().orElseThrow().rpm()).isEqualTo(4400);
        assertThat(practice.hold(Optional.of(Advance.ofDeg(50)))
                        .findings()
                        .get(0)
                        .code())
                .isEqualTo(FindingCode.RIG_SETTING_OUTSIDE);
    }

    @Test
    void timeAtLoadEndsASpeed() {
        Practice practice = Practice.start(plan(HOLD.replace("[pull]", "[pull]\nhold_most_s = 6")), 4)
                .value()
                .orElseThrow();
        assertThat(hold(practice).leftS().orElseThrow()).isLessThan(6);
        assertThat(hold(practice).step()).isEqualTo(HoldNow.Step.CLOSE_TIME);
        assertThat(practice.hold().orElseThrow().rpm()).isEqualTo(5600);
    }

    @Test
    void aLimitThatIsChangedEndsTheHoldThatPassesIt() {
        Practice practice = Practice.start(plan(HOLD), 4).value().orElseThrow();
        assertThat(practice.take(new OperatorAction.ChangeLimit("exhaust_c", 500)))
                .isEmpty();
        assertThat(hold(practice).step()).isEqualTo(HoldNow.Step.CLOSE_LIMIT);
    }
}
