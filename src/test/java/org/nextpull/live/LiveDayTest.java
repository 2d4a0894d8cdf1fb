package org.nextpull.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.WaitFor;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.plan.Limit;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;

class LiveDayTest {
    private static final String PLAIN = "rpm,torque [Nm],throttle [%]";

    private static HandDriven plain(String morePlan) {
        return new HandDriven(
                HandDriven.plan(morePlan),
                PLAIN,
                (rpm, torque, throttle) -> HandDriven.text("%.1f,%.2f,%.0f", rpm, torque, throttle));
    }

    private static OperatorAction.Setting set(int pull, double advanceDeg) {
        return new OperatorAction.Setting(
                pull,
                AskedSetting.none()
                        .withValues(Optional.of(Advance.ofDeg(advanceDeg)), Optional.empty(), Optional.empty()),
                false);
    }

    private static double advance(MeasuredPull pull) {
        return pull.setting().advance().orElseThrow().deg();
    }

    private static double proposed(HandDriven bench) {
        return bench.state()
                .advice()
                .flatMap(advice -> advice.setting())
                .flatMap(EngineSetting::advance)
                .orElseThrow()
                .deg();
    }

    private static List<FindingCode> codes(MeasuredPull pull) {
        return pull.findings().stream().map(Finding::code).toList();
    }

    @Test
    void beforeTheFirstPullTheStartSettingIsProposed() {
        HandDriven bench = plain("");
        assertThat(proposed(bench)).isEqualTo(20);
        assertThat(bench.state().nextPull()).isEqualTo(1);
        assertThat(bench.state().pullSinceS()).isEmpty();
    }

    @Test
    void aPullIsToldWithinHalfASecondOfItsEndThoughItsLambdaComesLater() {
        HandDriven bench = new HandDriven(
                HandDriven.plan(""),
                "rpm,torque [Nm],throttle [%],lambda",
                (rpm, torque, throttle) -> HandDriven.text("%.1f,%.2f,%.0f,0.88", rpm, torque, throttle));
        bench.load(1);
        assertThat(bench.state().pullSinceS().orElseThrow()).isBetween(5.9, 6.1);
        LiveState.PullSoFar soFar = bench.state().pull();
        assertThat(soFar.course()).as("some ten a second").hasSizeBetween(40, 80);
        assertThat(soFar.course().get(0).rpm())
                .isLessThan(soFar.course().get(soFar.course().size() - 1).rpm());
        assertThat(soFar.knockEvents()).as("no channel counts knock").isEmpty();
        double end = bench.nowS;
        bench.idle(0.5);
        assertThat(bench.endedAtS).hasSize(1);
        assertThat(bench.endedAtS.get(0) - end).isBetween(0.0, 0.2);
        assertThat(bench.ended.get(0).isUsed()).isTrue();
        bench.idle(5);
        assertThat(bench.ended).as("told once").hasSize(1);
        assertThat(bench.pullOf(1).figures()).isEqualTo(bench.ended.get(0).figures());
    }

    @Test
    void whatNobodySaidIsTakenAsProposedAndThatIsSaid() {
        HandDriven bench = plain("");
        bench.pull(1);
        assertThat(advance(bench.pullOf(1))).isEqualTo(20);
        assertThat(codes(bench.pullOf(1))).contains(FindingCode.SETTING_ASSUMED);
    }

    @Test
    void whatTheOperatorSaysIsSetIsWhatThePullWasRunWith() {
        HandDriven bench = plain("");
        bench.tell(set(1, 18));
        bench.pull(1);
        bench.load(1);
        bench.tell(set(2, 17));
        bench.idle(4);
        assertThat(advance(bench.pullOf(1))).isEqualTo(18);
        assertThat(advance(bench.pullOf(2))).as("said while it ran").isEqualTo(17);
        assertThat(codes(bench.pullOf(1))).doesNotContain(FindingCode.SETTING_ASSUMED);
        bench.tell(new OperatorAction.Correct(1, set(1, 16).setting()));
        assertThat(advance(bench.pullOf(1))).isEqualTo(16);
    }

    @Test
    void aLoggedAdvanceNeedsNoWord() {
        HandDriven bench = new HandDriven(
                HandDriven.plan(""),
                "rpm,torque [Nm],throttle [%],ignition advance [deg]",
                (rpm, torque, throttle) -> HandDriven.text("%.1f,%.2f,%.0f,22.5", rpm, torque, throttle));
        bench.pull(1);
        assertThat(advance(bench.pullOf(1))).isEqualTo(22.5);
        assertThat(codes(bench.pullOf(1))).doesNotContain(FindingCode.SETTING_ASSUMED);
        assertThat(bench.state().acts().all()).isEmpty();
    }

    @Test
    void aSettingThatWasConfirmedHoldsForThePullAfterARefusedOne() {
        HandDriven bench = plain("");
        bench.tell(set(1, 18));
        bench.rows(3, 2800, 4200, 1, 1);
        bench.idle(4);
        assertThat(bench.pullOf(1).standing()).isEqualTo(MeasuredPull.Status.CUT_SHORT);
        bench.pull(1);
        assertThat(advance(bench.pullOf(2))).isEqualTo(18);
        assertThat(codes(bench.pullOf(2))).doesNotContain(FindingCode.SETTING_ASSUMED);
    }

    @ParameterizedTest
    @EnumSource(
            value = Arrival.Cause.class,
            names = {"UNPLUGGED", "OVERRUN", "STOPPED"})
    void dataThatStopsCutsThePullInProgressAndNothingBeforeIt(Arrival.Cause why) {
        HandDriven bench = plain("");
        bench.pull(1);
        bench.rows(3, 2800, 4200, 1, 1);
        bench.arrive(new Arrival.Lost(HandDriven.PORT, bench.at(), why, 0));
        bench.silence(1.5);
        assertThat(bench.ended).hasSize(2);
        assertThat(bench.ended.get(1).standing()).isEqualTo(MeasuredPull.Status.CUT_SHORT);
        assertThat(codes(bench.ended.get(1))).contains(FindingCode.PULL_DATA_STOPPED);
        assertThat(bench.pullOf(1).isUsed()).isTrue();
        bench.arrive(new Arrival.Connected(HandDriven.PORT, bench.at()));
        bench.line(PLAIN);
        bench.idle(3);
        bench.pull(1);
        assertThat(bench.pullOf(3).isUsed()).isTrue();
    }

    @Test
    void theRestOfAPullThatWasCutIsNoPullOfItsOwn() {
        HandDriven bench = plain("");
        bench.pull(1);
        bench.rows(3, 2800, 4200, 1, 1);
        bench.arrive(new Arrival.Lost(HandDriven.PORT, bench.at(), Arrival.Cause.STOPPED, 0));
        bench.silence(1.5);
        bench.arrive(new Arrival.Connected(HandDriven.PORT, bench.at()));
        bench.line(PLAIN);
        bench.rows(3, 4500, 5800, 1, 1);
        bench.idle(4);
        assertThat(bench.ended).hasSize(2);
        bench.pull(1);
        assertThat(bench.pullOf(3).isUsed()).isTrue();
    }

    @Test
    void aSensorWithALimitThatDiesInAPullIsToldWhileItRuns() {
        HandDriven bench = new HandDriven(
                HandDriven.plan("[limits]\nexhaust_c = 850\n"),
                "rpm,torque [Nm],throttle [%],EGT [degC]",
                (rpm, torque, throttle) ->
                        HandDriven.text("%.1f,%.2f,%.0f,%s", rpm, torque, throttle, rpm > 4000 ? "" : "700"));
        bench.pull(1);
        assertThat(bench.codes()).containsOnlyOnce(FindingCode.LIVE_CHANNEL_SILENT);
        bench.pull(1);
        assertThat(bench.codes())
                .filteredOn(FindingCode.LIVE_CHANNEL_SILENT::equals)
                .hasSize(2);
    }

    @Test
    void aPullWhoseLoadWasOffWhenTheDataStoppedIsWhole() {
        HandDriven bench = plain("");
        bench.load(1);
        bench.idle(0.2);
        bench.arrive(new Arrival.Lost(HandDriven.PORT, bench.at(), Arrival.Cause.UNPLUGGED, 0));
        bench.silence(1.5);
        assertThat(bench.pullOf(1).isUsed()).isTrue();
    }

    @Test
    void actsThatCannotBeDoneAreSaidAndChangeNothing() {
        HandDriven bench = plain("");
        bench.pull(1);
        SessionResult before = bench.state().result();
        bench.tell(new OperatorAction.Strike(7, "x"));
        bench.tell(new OperatorAction.Note(OptionalInt.of(9), "x"));
        bench.tell(new OperatorAction.ChangeLimit("exhaust", 900));
        bench.tell(new OperatorAction.ChangeLimit("exhaust_c", 9000));
        assertThat(bench.codes())
                .contains(FindingCode.LIVE_PULL_UNKNOWN, FindingCode.PLAN_UNKNOWN_KEY, FindingCode.PLAN_OUT_OF_RANGE);
        assertThat(bench.state().result()).isEqualTo(before);
    }

    private static HandDriven withExhaust(String morePlan, double celsius) {
        return new HandDriven(
                HandDriven.plan(morePlan),
                "rpm,torque [Nm],throttle [%],EGT [degC]",
                (rpm, torque, throttle) ->
                        HandDriven.text("%.1f,%.2f,%.0f,%.0f", rpm, torque, throttle, throttle > 90 ? celsius : 400));
    }

    @Test
    void anAlarmSoundsWithItsRowAndTheCounselToLift() {
        HandDriven bench = withExhaust("[limits]\nexhaust_c = 850\n", 900);
        double start = bench.nowS;
        bench.rows(0.2, 2800, 2900, 1, 1);
        assertThat(bench.alarms).hasSize(1);
        assertThat(bench.alarmAtS.get(0)).isEqualTo(start);
        assertThat(bench.alarms.get(0).alarm().limit()).isEqualTo(Limit.EXHAUST);
        assertThat(bench.state().sounding()).extracting(Alarm::limit).containsExactly(Limit.EXHAUST);
        bench.idle(1);
        assertThat(bench.alarms)
                .extracting(Alarm.Event::kind)
                .containsExactly(Alarm.Event.Kind.SOUNDED, Alarm.Event.Kind.CLEARED);
        assertThat(bench.state().sounding()).isEmpty();
    }

    @Test
    void aLimitHoldsFromItsChangeOnAndWhatWasMetBeforeStays() {
        HandDriven bench = withExhaust("[limits]\nexhaust_c = 850\n", 900);
        bench.pull(1);
        bench.tell(new OperatorAction.ChangeLimit("exhaust_c", 950));
        bench.pull(1);
        assertThat(bench.alarms)
                .filteredOn(event -> event.kind() == Alarm.Event.Kind.SOUNDED)
                .hasSize(1);
        assertThat(bench.pullOf(1).limitsMet()).hasSize(1);
        assertThat(bench.pullOf(2).limitsMet()).isEmpty();
        assertThat(bench.state().plan().limits().most().exhaust().orElseThrow().celsius())
                .isCloseTo(950, within(1e-6));
    }

    @Test
    void anAnnouncedLabelStartsItsSweepAndIsCarriedByItsPulls() {
        HandDriven bench = plain("");
        bench.pull(1);
        bench.pull(1);
        bench.pull(1.02);
        assertThat(proposed(bench)).isGreaterThan(20);
        bench.tell(new OperatorAction.Next(Optional.of("long runners"), Optional.empty()));
        assertThat(proposed(bench)).isEqualTo(20);
        bench.pull(1);
        assertThat(bench.pullOf(4).setting().label()).contains("long runners");
        assertThat(bench.pullOf(3).setting().label()).isEmpty();
    }

    @Test
    void anUnknownFuelIsNotAnnounced() {
        HandDriven bench = plain("");
        bench.tell(new OperatorAction.Next(Optional.empty(), Optional.of("e58")));
        assertThat(bench.codes()).contains(FindingCode.FUEL_UNKNOWN);
        assertThat(bench.state().acts().all()).isEmpty();
    }

    @Test
    void whatThePlanNeedsAndNobodySendsIsSaidBeforeTheFirstPull() {
        HandDriven bench = plain("[air]\nstandard = \"iso-1585\"\n[limits]\nexhaust_c = 900\noil_c = 130\n");
        bench.idle(6);
        assertThat(bench.notices)
                .extracting(LiveState.Notice::finding)
                .filteredOn(finding -> finding.code() == FindingCode.LIMIT_NOT_WATCHED)
                .extracting(finding -> finding.text("limit").orElse(""))
                .containsExactly("exhaust", "oil");
        assertThat(bench.codes()).contains(FindingCode.LIVE_AIR_MISSING);
        long before = bench.codes().size();
        bench.idle(6);
        assertThat(bench.codes()).hasSize((int) before);
    }

    /** Nothing is logged for knock: no more advance is asked for before the operator has said so once, and the capture keeps that. */
    @Test
    void noStepTowardWhatNothingWatchesIsAskedForBeforeTheOperatorSaysSo() {
        String limits = "[limits]\nknock_events = 1\n";
        HandDriven bench = plain(limits);
        bench.idle(2);
        bench.pull(1);
        bench.pull(1.001);
        assertThat(bench.state().advice().map(Advice::code)).contains(AdviceCode.NOT_WATCHED);
        assertThat(proposed(bench)).isEqualTo(20);

        bench.tell(new OperatorAction.OwnWatch(bench.state().result().unwatchedNow()));
        assertThat(bench.state().advice().map(Advice::code)).contains(AdviceCode.CLIMB_TIMING);
        assertThat(proposed(bench)).isEqualTo(21);
        HandDriven again = bench.replayed(HandDriven.setup(HandDriven.plan(limits)));
        assertThat(proposed(again)).isEqualTo(21);
    }

    @Test
    void theTimeBetweenPullsRunsFromTheEndOfOne() {
        HandDriven bench = plain("[start]\ncool_down_s = 30\n");
        assertThat(bench.state().coolDownLeftS()).isEmpty();
        bench.load(1);
        bench.idle(4);
        assertThat(bench.state().coolDownLeftS().orElseThrow()).isBetween(25.5, 27.0);
        bench.idle(20);
        assertThat(bench.state().coolDownLeftS().orElseThrow()).isBetween(5.5, 7.0);
        bench.idle(8);
        assertThat(bench.state().coolDownLeftS()).isEmpty();
    }

    @Test
    void theOperatorsMarkOfKnockForbids() {
        HandDriven bench = plain("");
        bench.pull(1);
        bench.pull(1);
        bench.pull(1.02);
        bench.tell(new OperatorAction.Correct(3, AskedSetting.none().withKnock(KnockMark.HEARD)));
        assertThat(bench.pullOf(3).knock().isHeard()).isTrue();
        assertThat(codes(bench.pullOf(3))).as("its setting stays as assumed").contains(FindingCode.SETTING_ASSUMED);
        double knocked = bench.pullOf(3).setting().advance().orElseThrow().deg();
        assertThat(proposed(bench)).as("below %s deg less the margin", knocked).isLessThan(knocked - 2);
    }

    @Test
    void coolantOutOfItsWindowIsWaitedForAndItsReturnIsNoticed() {
        double[] coolant = {40};
        HandDriven bench = new HandDriven(
                HandDriven.plan("[start]\ncoolant_c = [80, 95]\n"),
                "rpm,torque [Nm],throttle [%],coolant temp [degC]",
                (rpm, torque, throttle) -> HandDriven.text("%.1f,%.2f,%.0f,%.1f", rpm, torque, throttle, coolant[0]));
        bench.idle(2);
        assertThat(bench.state().advice().orElseThrow().action()).isEqualTo(Action.WAIT);
        assertThat(bench.state().advice().orElseThrow().waitFor().orElseThrow().condition())
                .isEqualTo(WaitFor.Condition.COOLANT);
        coolant[0] = 82;
        bench.idle(2);
        assertThat(bench.state().advice().orElseThrow().action()).isEqualTo(Action.PULL);
    }

    @Test
    void whatWasCapturedGivesTheIdenticalDay() {
        HandDriven bench = withExhaust("[limits]\nexhaust_c = 850\n", 900);
        bench.tell(set(1, 18));
        bench.pull(1);
        bench.tell(new OperatorAction.ChangeLimit("exhaust_c", 950));
        bench.pull(1.01);
        bench.tell(new OperatorAction.Lift(1, "the sensor touched the pipe"));
        bench.rows(2, 2800, 3800, 1, 1);
        bench.arrive(new Arrival.Lost(HandDriven.PORT, bench.at(), Arrival.Cause.UNPLUGGED, 0));
        bench.silence(3);
        bench.arrive(new Arrival.Connected(HandDriven.PORT, bench.at()));
        bench.line("rpm,torque [Nm],throttle [%],EGT [degC]");
        bench.idle(2);
        bench.pull(1.02);
        bench.tell(new OperatorAction.Strike(2, "wrong gear"));
        bench.tell(new OperatorAction.Note(OptionalInt.of(4), "smells rich"));
        LiveState before = bench.state();
        HandDriven again = bench.replayed(HandDriven.setup(HandDriven.plan("[limits]\nexhaust_c = 850\n")));
        assertThat(again.state().acts().all()).isEqualTo(before.acts().all());
        assertThat(again.state().plan()).isEqualTo(before.plan());
        assertThat(again.state().result().pulls()).isEqualTo(before.result().pulls());
        assertThat(again.state().result().verdict()).isEqualTo(before.result().verdict());
        assertThat(again.ended).as("nothing is told twice").isEmpty();
        assertThat(again.alarms).isEmpty();
    }

    /** Pulls that log their advance need no word, so nothing in the capture says that they were settled before the label was announced. */
    @Test
    void whatWasAnnouncedLaterIsNotPutOnEarlierPullsByAReplay() {
        HandDriven bench = new HandDriven(
                HandDriven.plan(""),
                "rpm,torque [Nm],throttle [%],ignition advance [deg]",
                (rpm, torque, throttle) -> HandDriven.text("%.1f,%.2f,%.0f,20.0", rpm, torque, throttle));
        bench.pull(1);
        bench.pull(1);
        bench.tell(new OperatorAction.Next(Optional.of("long runners"), Optional.empty()));
        bench.pull(1);
        LiveState before = bench.state();
        HandDriven again = bench.replayed(HandDriven.setup(HandDriven.plan("")));
        assertThat(again.state().acts().all()).isEqualTo(before.acts().all());
        assertThat(again.state().result().pulls()).isEqualTo(before.result().pulls());
        assertThat(again.pullOf(2).setting().label()).isEmpty();
        assertThat(again.pullOf(3).setting().label()).contains("long runners");
    }

    @Test
    void aSettingThatWasNotCapturedAnyMoreIsAssumedAgainAfterAReplay() {
        HandDriven bench = plain("");
        bench.pull(1);
        bench.pull(1);
        bench.pull(1.02);
        LiveState before = bench.state();
        bench.captured.removeIf(arrival -> arrival.source().equals(OperatorLines.SOURCE));
        HandDriven again = bench.replayed(HandDriven.setup(HandDriven.plan("")));
        assertThat(again.state().result().pulls()).isEqualTo(before.result().pulls());
        assertThat(again.state().acts().all()).isEqualTo(before.acts().all());
    }
}
