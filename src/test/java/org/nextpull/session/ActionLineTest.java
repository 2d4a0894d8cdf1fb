package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

class ActionLineTest {
    private static final AskedSetting FULL = AskedSetting.none()
            .withValues(Optional.of(Advance.ofDeg(26.5)), Optional.empty(), Optional.of(Lambda.of(0.87)))
            .withConfiguration(Optional.of("long runners"), Optional.of("e10"))
            .withKnock(KnockMark.HEARD)
            .withNote(Optional.of("smells\trich\nback\\slash = 1"));

    static List<OperatorAction> acts() {
        return List.of(
                new OperatorAction.Strike(3, "clutch slipped"),
                new OperatorAction.Strike(4, ""),
                new OperatorAction.Restore(3),
                new OperatorAction.Lift(12, "det can\r\nwas a loose stay"),
                new OperatorAction.Correct(2, FULL),
                new OperatorAction.Setting(7, FULL, false),
                new OperatorAction.Setting(8, AskedSetting.none(), true),
                new OperatorAction.Note(OptionalInt.of(4), "Überdruck"),
                new OperatorAction.Note(OptionalInt.empty(), "rain"),
                new OperatorAction.ChangeLimit("exhaust_c", 900.25),
                new OperatorAction.OwnWatch(List.of(Limit.EXHAUST, Limit.FUEL_PRESSURE)),
                new OperatorAction.Next(Optional.of("short runners"), Optional.empty()),
                new OperatorAction.Next(Optional.empty(), Optional.of("e85")));
    }

    @ParameterizedTest
    @MethodSource("acts")
    void anActIsReadAsItWasWrittenAndIsOneLine(OperatorAction act) {
        String line = ActionLine.write(act);
        assertThat(line).doesNotContain("\n", "\r");
        assertThat(ActionLine.read(line)).contains(act);
    }

    @Test
    void aLineIsReadableByAPerson() {
        assertThat(ActionLine.write(new OperatorAction.Strike(3, "clutch slipped")))
                .isEqualTo("strike\tpull=3\ttext=clutch slipped");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "dance\tpull=3",
                "strike",
                "strike\tpull=3",
                "strike\tpull=three\ttext=x",
                "strike\tpull",
                "strike\t=3\ttext=x",
                "correct\tpull=3\tlambda=-1",
                "correct\tpull=3\tknock=loud",
                "limit\tkey=exhaust_c\tvalue=hot",
                "unwatched",
                "unwatched\tlimits=gearbox",
                "restore\tpull=99999999999"
            })
    void whatIsNoActIsNone(String line) {
        assertThat(ActionLine.read(line)).isEmpty();
    }
}
