package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.report.HandAct;
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

    /** What was made of a line: one thing. */
    private record Heard(List<Object> all) implements LiveTyped.Reply {
        @Override
        public void act(OperatorAction act) {
            all.add(act);
        }

        @Override
        public void asProposed() {
            all.add("as proposed");
        }

        @Override
        public void set(EngineSetting setting) {
            all.add(setting);
        }

        @Override
        public void why() {
            all.add("why");
        }

        @Override
        public void show() {
            all.add("show");
        }

        @Override
        public void help() {
            all.add("help");
        }

        @Override
        public void end() {
            all.add("end");
        }

        @Override
        public void wrong(String message) {
            all.add("wrong: " + message);
        }
    }

    private static Object typed(String line, boolean running, List<Limit> unwatched) {
        Heard heard = new Heard(new ArrayList<>());
        new LiveTyped(new LiveTyped.Day(BOTH, 4, running, unwatched), heard).read(line);
        assertThat(heard.all()).hasSize(1);
        return heard.all().get(0);
    }

    private static Object typed(String line) {
        return typed(line, false, List.of(Limit.EXHAUST, Limit.LEAN));
    }

    private static AskedSetting setting(double deg, double lambda) {
        return AskedSetting.none()
                .withValues(Optional.of(Advance.ofDeg(deg)), Optional.empty(), Optional.of(Lambda.of(lambda)));
    }

    @Test
    void emptyConfirmsAndNumbersAreASetting() {
        assertThat(typed("")).isEqualTo("as proposed");
        assertThat(typed("  26 0,87 "))
                .isEqualTo(EngineSetting.ofNumbers(
                        Optional.of(Advance.ofDeg(26)), Optional.empty(), Optional.of(Lambda.of(0.87))));
    }

    @Test
    void cellsAreAMapWhereTheSpeedsRise() {
        assertThat(typed("3500:18 5000:21,5"))
                .isEqualTo(EngineSetting.of(
                        SparkMap.of(new double[] {3500, 5000}, new double[] {18, 21.5}), Optional.empty()));
        for (String wrong :
                List.of("3500:18 3500:20", "3500:18 5000", "3500:", ":18", "3500:18:2", "3500:100", "a:b")) {
            assertThat(typed(wrong)).as(wrong).asString().startsWith("wrong: A map is rpm:degrees for each cell");
        }
    }

    @Test
    void aWordOfAnyLengthIsAnsweredInALine() {
        assertThat(typed("x".repeat(9000))).asString().hasSizeLessThan(120);
    }

    @Test
    void wordsAreActs() {
        assertThat(typed("correct 3 26 0.87")).isEqualTo(new OperatorAction.Correct(3, setting(26, 0.87)));
        assertThat(typed("exclude 3 the Clutch slipped")).isEqualTo(new OperatorAction.Strike(3, "the Clutch slipped"));
        assertThat(typed("strike 3")).isEqualTo(new OperatorAction.Strike(3, "excluded by the operator"));
        assertThat(typed("restore 3")).isEqualTo(new OperatorAction.Restore(3));
        assertThat(typed("Lift 2 a loose stay rang")).isEqualTo(new OperatorAction.Lift(2, "a loose stay rang"));
        assertThat(typed("note smells rich")).isEqualTo(new OperatorAction.Note(OptionalInt.empty(), "smells rich"));
        assertThat(typed("note 3 smells rich")).isEqualTo(new OperatorAction.Note(OptionalInt.of(3), "smells rich"));
        assertThat(typed("limit exhaust_c 900")).isEqualTo(new OperatorAction.ChangeLimit("exhaust_c", 900));
        assertThat(typed("next label long runners"))
                .isEqualTo(new OperatorAction.Next(Optional.of("long runners"), Optional.empty()));
        assertThat(typed("next label B fuel e85"))
                .isEqualTo(new OperatorAction.Next(Optional.of("B"), Optional.of("e85")));
    }

    @Test
    void knockMarksTheRunningPullOrTheLastOne() {
        AskedSetting heard = AskedSetting.none().withKnock(KnockMark.HEARD);
        assertThat(typed("knock")).isEqualTo(new OperatorAction.Correct(3, heard));
        assertThat(typed("knock 2")).isEqualTo(new OperatorAction.Correct(2, heard));
        assertThat(typed("knock", true, List.of())).isEqualTo(new OperatorAction.Setting(4, heard, false));
        assertThat(typed("quiet"))
                .isEqualTo(new OperatorAction.Correct(3, AskedSetting.none().withKnock(KnockMark.NONE)));
    }

    @Test
    void theOtherWords() {
        assertThat(typed("why")).isEqualTo("why");
        assertThat(typed("SHOW")).isEqualTo("show");
        assertThat(typed("help")).isEqualTo("help");
        assertThat(typed("?")).isEqualTo("why");
        assertThat(typed("lift 3 a loose stay rang")).isEqualTo(typed("override 3 a loose stay rang"));
        assertThat(typed("end")).isEqualTo("end");
        assertThat(typed("stop the fan")).isEqualTo("wrong: To end the session type stop alone.");
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
        assertThat(typed(line).toString()).matches("wrong: .*(such as|type|Type|known|No engine|knock 3).*");
    }

    @Test
    void whatNothingWatchesIsWatchedByHandOnceItIsSaid() {
        assertThat(typed("unwatched")).isEqualTo(new OperatorAction.OwnWatch(List.of(Limit.EXHAUST, Limit.LEAN)));
        assertThat(typed("unwatched fuel-pressure"))
                .isEqualTo(new OperatorAction.OwnWatch(List.of(Limit.FUEL_PRESSURE)));
        assertThat(typed("unwatched gearbox").toString()).startsWith("wrong: ");
        assertThat(typed("unwatched", false, List.of()).toString()).startsWith("wrong: ");
    }

    @Test
    void everyActThatHasAWordIsUnderstoodAndExplained() {
        for (HandAct act : HandAct.values()) {
            String word = act.help().split("[ ,]", 2)[0];
            assertThat(HandAct.of(word)).contains(act);
            assertThat(LiveTyped.help("", "")).contains(act.help());
        }
    }
}
