package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

class LiveTypedTest {
    private static final SweepPlan BOTH =
            PlanText.read("""
                    [timing]
                    start_deg = 20
                    least_deg = 10
                    most_deg = 46
                    [mixture]
                    start_lambda = 0.87
                    richest_lambda = 0.80
                    leanest_lambda = 0.95
                    """, "test.toml").value().orElseThrow();

    private static LiveTyped typed(String line) {
        return LiveTyped.of(line, new LiveTyped.Context(BOTH, 4, false, List.of(Limit.EXHAUST, Limit.LEAN)));
    }

    private static OperatorAction act(String line) {
        return ((LiveTyped.Do) typed(line)).act();
    }

    private static AskedSetting setting(double deg, double lambda) {
        return AskedSetting.none()
                .withValues(Optional.of(Advance.ofDeg(deg)), Optional.empty(), Optional.of(Lambda.of(lambda)));
    }

    @Test
    void emptyConfirmsAndNumbersAreASetting() {
        assertThat(typed("")).isInstanceOf(LiveTyped.AsProposed.class);
        assertThat(typed("  26 0,87 "))
                .isEqualTo(new LiveTyped.Set(EngineSetting.ofNumbers(
                        Optional.of(Advance.ofDeg(26)), Optional.empty(), Optional.of(Lambda.of(0.87)))));
    }

    @Test
    void wordsAreActs() {
        assertThat(act("correct 3 26 0.87")).isEqualTo(new OperatorAction.Correct(3, setting(26, 0.87)));
        assertThat(act("exclude 3 the Clutch slipped")).isEqualTo(new OperatorAction.Strike(3, "the Clutch slipped"));
        assertThat(act("strike 3")).isEqualTo(new OperatorAction.Strike(3, "excluded by the operator"));
        assertThat(act("restore 3")).isEqualTo(new OperatorAction.Restore(3));
        assertThat(act("Lift 2 a loose stay rang")).isEqualTo(new OperatorAction.Lift(2, "a loose stay rang"));
        assertThat(act("note smells rich")).isEqualTo(new OperatorAction.Note(OptionalInt.empty(), "smells rich"));
        assertThat(act("note 3 smells rich")).isEqualTo(new OperatorAction.Note(OptionalInt.of(3), "smells rich"));
        assertThat(act("limit exhaust_c 900")).isEqualTo(new OperatorAction.ChangeLimit("exhaust_c", 900));
        assertThat(act("next label long runners"))
                .isEqualTo(new OperatorAction.Next(Optional.of("long runners"), Optional.empty()));
        assertThat(act("next label B fuel e85"))
                .isEqualTo(new OperatorAction.Next(Optional.of("B"), Optional.of("e85")));
    }

    @Test
    void knockMarksTheRunningPullOrTheLastOne() {
        AskedSetting heard = AskedSetting.none().withKnock(KnockMark.HEARD);
        assertThat(act("knock")).isEqualTo(new OperatorAction.Correct(3, heard));
        assertThat(act("knock 2")).isEqualTo(new OperatorAction.Correct(2, heard));
        assertThat(((LiveTyped.Do) LiveTyped.of("knock", new LiveTyped.Context(BOTH, 4, true, List.of()))).act())
                .isEqualTo(new OperatorAction.Setting(4, heard, false));
        assertThat(act("quiet"))
                .isEqualTo(new OperatorAction.Correct(3, AskedSetting.none().withKnock(KnockMark.NONE)));
    }

    @Test
    void theOtherWords() {
        assertThat(typed("why")).isInstanceOf(LiveTyped.Why.class);
        assertThat(typed("SHOW")).isInstanceOf(LiveTyped.Show.class);
        assertThat(typed("help")).isInstanceOf(LiveTyped.Help.class);
        assertThat(typed("?")).isInstanceOf(LiveTyped.Why.class);
        assertThat(act("lift 3 a loose stay rang")).isEqualTo(act("override 3 a loose stay rang"));
        assertThat(typed("end")).isInstanceOf(LiveTyped.End.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dance",
                "26 0.87 3",
                "900",
                "26 8.7",
                "strike",
                "strike three",
                "override 3",
                "restore",
                "correct 3",
                "correct x 26",
                "correct 3 dance",
                "note",
                "limit exhaust_c",
                "limit exhaust_c hot",
                "next",
                "next B",
                "next label",
                "knock x"
            })
    void whatIsNotUnderstoodSaysWhatIs(String line) {
        assertThat(typed(line)).isInstanceOf(LiveTyped.Wrong.class);
        assertThat(((LiveTyped.Wrong) typed(line)).message())
                .matches(".*(such as|type|Type|known|No engine|knock 3).*");
    }

    @Test
    void whatNothingWatchesIsWatchedByHandOnceItIsSaid() {
        assertThat(typed("unwatched"))
                .isEqualTo(new LiveTyped.Do(new OperatorAction.OwnWatch(List.of(Limit.EXHAUST, Limit.LEAN))));
        assertThat(typed("unwatched fuel-pressure"))
                .isEqualTo(new LiveTyped.Do(new OperatorAction.OwnWatch(List.of(Limit.FUEL_PRESSURE))));
        assertThat(typed("unwatched gearbox")).isInstanceOf(LiveTyped.Wrong.class);
        assertThat(LiveTyped.of("unwatched", new LiveTyped.Context(BOTH, 4, false, List.of())))
                .isInstanceOf(LiveTyped.Wrong.class);
    }
}
