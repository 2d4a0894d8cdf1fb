package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.PresentConditions;
import org.nextpull.advice.Reason;
import org.nextpull.advice.WaitFor;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.Counsel;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.Role;
import org.nextpull.plan.Limit;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.UnitSystem;

class LiveTextTest {
    private static final LiveText METRIC = new LiveText(new Shown(UnitSystem.METRIC));
    private static final LiveText US = new LiveText(new Shown(UnitSystem.US));

    private static Advice waiting() {
        WaitFor coolant =
                new WaitFor(WaitFor.Condition.COOLANT, Temperature.ofCelsius(60), Temperature.ofCelsius(80), 60);
        return new Advice(
                Action.WAIT,
                AdviceCode.OUT_OF_WINDOW,
                Optional.empty(),
                new Reason.OutOfWindow(WaitFor.Condition.COOLANT, coolant.now(), coolant.want()),
                Optional.of(coolant),
                Optional.empty());
    }

    private static PresentConditions coolant(double celsius) {
        return new PresentConditions(
                Optional.of(Temperature.ofCelsius(celsius)), Optional.empty(), Optional.empty(), Optional.empty());
    }

    @Test
    void waitingSaysHowFarOffItIsByTheValueOfTheMoment() {
        assertThat(METRIC.waiting(waiting(), coolant(64))).contains("Waiting for coolant: 64 °C, 16.0 °C below 80 °C.");
        assertThat(METRIC.waiting(waiting(), PresentConditions.unknown()))
                .contains("Waiting for coolant: 60 °C, 20.0 °C below 80 °C.");
        assertThat(US.waiting(waiting(), coolant(64))).contains("Waiting for coolant: 147 °F, 28.8 °F below 176 °F.");
    }

    @Test
    void whatWasTakenDownIsSaidBack() {
        AskedSetting setting = AskedSetting.none()
                .withValues(Optional.of(Advance.ofDeg(26)), Optional.empty(), Optional.of(Lambda.of(0.87)));
        assertThat(ActText.taken(new OperatorAction.Setting(4, setting, false)))
                .isEqualTo("Set for pull 4: 26.0 deg, lambda 0.870.");
        assertThat(ActText.taken(new OperatorAction.Setting(
                        9, AskedSetting.none().withConfiguration(Optional.of("alcohol"), Optional.empty()), false)))
                .isEqualTo("Set for pull 9: label alcohol.");
        assertThat(ActText.taken(
                        new OperatorAction.Correct(3, AskedSetting.none().withKnock(KnockMark.HEARD))))
                .isEqualTo("Pull 3 was run with knock heard.");
        assertThat(ActText.taken(new OperatorAction.Note(OptionalInt.of(2), "x")))
                .isEqualTo("Noted on pull 2.");
        assertThat(ActText.taken(new OperatorAction.Next(Optional.of("B"), Optional.of("e85"))))
                .isEqualTo("Parts/fuel from the next pull: label B, fuel e85.");
    }

    @Test
    void aCoolDownIsWaitedForUnlessAChangeOverFillsIt() {
        LiveText words = new LiveText(new Shown(UnitSystem.METRIC));
        assertThat(words.afterCoolDown(AdviceTextTest.advice(AdviceCode.CLIMB_TIMING), 41.2)
                        .get(0))
                .startsWith("WAIT 42 s. Then SET ");
        assertThat(words.afterCoolDown(AdviceTextTest.advice(AdviceCode.CHANGE_OVER), 41.2)
                        .get(0))
                .startsWith("CHANGE OVER to ");
    }

    @Test
    void anAlarmSaysTheActThenWhatAndHowMuch() {
        Alarm.RowPlace row = new Alarm.RowPlace(5, OptionalDouble.of(1));
        Alarm alarm =
                new Alarm(Limit.EXHAUST, Channel.of(Role.EXHAUST_TEMPERATURE), row, row, 1, 273.15 + 912, 273.15 + 900);
        AlarmText words = new AlarmText(new Shown(UnitSystem.METRIC));
        assertThat(words.text(new Alarm.Event(Alarm.Event.Kind.SOUNDED, alarm, row)))
                .isEqualTo(
                        "CLOSE THROTTLE. Exhaust temperature 912 °C, limit 900 °C. Let it cool. Next pull: no further "
                                + "retard and no leaner.");
        assertThat(words.text(new Alarm.Event(Alarm.Event.Kind.CLEARED, alarm, row)))
                .isEqualTo("Cleared. Exhaust temperature 912 °C, limit 900 °C.");
    }

    @ParameterizedTest
    @EnumSource(Counsel.class)
    void theActComesFirstAndOnlyKnockAsksForLessAdvance(Counsel counsel) {
        assertThat(AlarmText.act(counsel)).isIn("CLOSE THROTTLE", "SHUT DOWN");
        assertThat(AlarmText.afterwards(counsel).contains("less advance"))
                .isEqualTo(counsel == Counsel.LIFT_THEN_RETARD);
        assertThat(AlarmText.afterwards(counsel))
                .as("whether the plan allows a richer setting is for the next step to say")
                .doesNotContain("richer");
    }
}
