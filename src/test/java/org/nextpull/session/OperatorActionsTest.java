package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.NextConfiguration;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.BenchLog;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Temperature;

class OperatorActionsTest {
    private static AskedSetting advance(double deg) {
        return AskedSetting.none().withValues(Optional.of(Advance.ofDeg(deg)), Optional.empty(), Optional.empty());
    }

    private static SessionInput day(BenchLog log, OperatorAction... acts) {
        SessionInput day = Days.ofLogs(Days.timing(), new Days.Named("day.csv", log));
        return OperatorActions.of(List.of(acts)).applied(day);
    }

    private static BenchLog pulls(int count) {
        BenchLog log = new BenchLog(50, 1);
        for (int pull = 0; pull < count; pull++) {
            Days.pull(log, 1 + 0.01 * pull);
        }
        return log;
    }

    private static MeasuredPull pull(SessionResult result, int number) {
        return result.pulls().get(number - 1);
    }

    private static double nextAdvance(SessionResult result) {
        return result.verdict()
                .map(Verdict::advice)
                .flatMap(advice -> advice.setting())
                .flatMap(EngineSetting::advance)
                .orElseThrow()
                .deg();
    }

    @Test
    void aStruckPullDoesNotCountUntilItIsRestored() {
        BenchLog log = pulls(2);
        SessionResult struck = Session.evaluate(day(log, new OperatorAction.Strike(1, "missed gear")));
        assertThat(pull(struck, 1).standing()).isEqualTo(MeasuredPull.Status.STRUCK);
        assertThat(struck.amendments().struck()).isEqualTo(Map.of(1, "missed gear"));
        SessionResult restored =
                Session.evaluate(day(log, new OperatorAction.Strike(1, "missed gear"), new OperatorAction.Restore(1)));
        assertThat(pull(restored, 1).standing()).isEqualTo(MeasuredPull.Status.USED);
    }

    @Test
    void aLiftNamesThePull() {
        OperatorActions acts = OperatorActions.of(List.of(new OperatorAction.Lift(2, "a loose stay")));
        assertThat(acts.amendments().lifted()).containsExactly(2);
    }

    @Test
    void aSettingIsWhatThePullWasRunWithAndACorrectionChangesOnlyWhatItSays() {
        AskedSetting set = advance(24)
                .orElse(AskedSetting.none()
                        .withValues(Optional.empty(), Optional.empty(), Optional.of(Lambda.of(0.87)))
                        .withConfiguration(Optional.of("A"), Optional.empty()));
        SessionResult result = Session.evaluate(
                day(pulls(1), new OperatorAction.Setting(1, set, false), new OperatorAction.Correct(1, advance(26))));
        assertThat(pull(result, 1).setting().advance()).contains(Advance.ofDeg(26));
        assertThat(pull(result, 1).setting().lambda()).contains(Lambda.of(0.87));
        assertThat(pull(result, 1).setting().label()).contains("A");
        assertThat(Days.codes(pull(result, 1).findings())).doesNotContain(FindingCode.SETTING_ASSUMED);
    }

    @Test
    void anAssumedSettingIsSaidUntilSomebodyConfirmsIt() {
        OperatorAction assumed = new OperatorAction.Setting(1, advance(24), true);
        SessionResult guessed = Session.evaluate(day(pulls(1), assumed));
        assertThat(pull(guessed, 1).setting().advance()).contains(Advance.ofDeg(24));
        assertThat(Days.codes(pull(guessed, 1).findings())).contains(FindingCode.SETTING_ASSUMED);
        SessionResult marked = Session.evaluate(day(
                pulls(1),
                assumed,
                new OperatorAction.Correct(1, AskedSetting.none().withKnock(KnockMark.NONE))));
        assertThat(Days.codes(pull(marked, 1).findings())).contains(FindingCode.SETTING_ASSUMED);
        SessionResult confirmed =
                Session.evaluate(day(pulls(1), assumed, new OperatorAction.Setting(1, advance(24), false)));
        assertThat(Days.codes(pull(confirmed, 1).findings())).doesNotContain(FindingCode.SETTING_ASSUMED);
    }

    @Test
    void aSettingForAPullThatIsYetToComeIsNoError() {
        SessionResult result = Session.evaluate(day(pulls(1), new OperatorAction.Setting(2, advance(24), false)));
        assertThat(Days.codes(result.findings()))
                .doesNotContain(FindingCode.SETTINGS_FOR_NO_PULL, FindingCode.SETTINGS_COUNT);
    }

    @Test
    void notesOnAPullStandInItsSettingInOrder() {
        SessionResult result = Session.evaluate(day(
                pulls(1),
                new OperatorAction.Note(OptionalInt.of(1), "smells rich"),
                new OperatorAction.Note(OptionalInt.empty(), "rain"),
                new OperatorAction.Note(OptionalInt.of(1), "plugs changed")));
        assertThat(pull(result, 1).setting().note()).contains("smells rich; plugs changed");
    }

    @Test
    void aLimitIsChangedByItsKeyAndAWrongOneLeavesThePlan() {
        SweepPlan plan = Days.timing();
        OperatorActions acts = OperatorActions.of(List.of(
                new OperatorAction.ChangeLimit("exhaust_c", 900),
                new OperatorAction.ChangeLimit("exhaust_c", 9000),
                new OperatorAction.ChangeLimit("exhaust", 800),
                new OperatorAction.ChangeLimit("lean_lambda", 0.98),
                new OperatorAction.ChangeLimit("lean_for_s", 0.5)));
        SweepPlan changed = acts.plan(plan);
        assertThat(changed.limits().most().exhaust()).contains(Temperature.ofCelsius(900));
        assertThat(changed.limits().lean().orElseThrow().leanest()).isEqualTo(Lambda.of(0.98));
        assertThat(changed.limits().lean().orElseThrow().forS()).isEqualTo(0.5);
        assertThat(changed.withLimits(plan.limits())).isEqualTo(plan);
        assertThat(Days.codes(OperatorActions.changed(plan, new OperatorAction.ChangeLimit("exhaust", 800))
                        .findings()))
                .containsExactly(FindingCode.PLAN_UNKNOWN_KEY);
        assertThat(Days.codes(OperatorActions.changed(plan, new OperatorAction.ChangeLimit("exhaust_c", 9000))
                        .findings()))
                .containsExactly(FindingCode.PLAN_OUT_OF_RANGE);
    }

    @Test
    void anAnnouncedConfigurationStartsItsSweepBeforeItsFirstPull() {
        OperatorAction[] ran = {
            new OperatorAction.Setting(1, advance(20).withConfiguration(Optional.of("A"), Optional.empty()), false),
            new OperatorAction.Setting(2, advance(20).withConfiguration(Optional.of("A"), Optional.empty()), false),
            new OperatorAction.Setting(3, advance(22).withConfiguration(Optional.of("A"), Optional.empty()), false)
        };
        SessionResult same = Session.evaluate(day(pulls(3), ran));
        assertThat(nextAdvance(same)).isGreaterThan(20);
        OperatorAction[] announced = {
            ran[0], ran[1], ran[2], new OperatorAction.Next(Optional.of("B"), Optional.empty())
        };
        SessionResult other = Session.evaluate(day(pulls(3), announced));
        assertThat(nextAdvance(other)).isEqualTo(20);
    }

    @Test
    void whatIsAnnouncedTwiceAddsUp() {
        OperatorActions acts = OperatorActions.of(List.of(
                new OperatorAction.Next(Optional.of("B"), Optional.empty()),
                new OperatorAction.Next(Optional.empty(), Optional.of("e85"))));
        assertThat(acts.next()).isEqualTo(new NextConfiguration(Optional.of("B"), Optional.of("e85")));
    }
}
