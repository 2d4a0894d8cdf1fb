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

class ActLineTest {
    private static final AskedSetting FULL = AskedSetting.none()
            .withValues(Optional.of(Advance.ofDeg(26.5)), Optional.empty(), Optional.of(Lambda.of(0.87)))
            .withConfiguration(Optional.of("long runners"), Optional.of("e10"))
            .withKnock(KnockMark.HEARD)
            .withNote(Optional.of("smells\trich\nback\\slash = 1"));

    static List<Act> acts() {
        return List.of(
                new Act.Strike(3, "clutch slipped"),
                new Act.Strike(4, ""),
                new Act.Restore(3),
                new Act.Lift(12, "det can\r\nwas a loose stay"),
                new Act.Correct(2, FULL),
                new Act.Setting(7, FULL, false),
                new Act.Setting(8, AskedSetting.none(), true),
                new Act.Note(OptionalInt.of(4), "Überdruck"),
                new Act.Note(OptionalInt.empty(), "rain"),
                new Act.ChangeLimit("exhaust_c", 900.25),
                new Act.OwnWatch(List.of(Limit.EXHAUST, Limit.FUEL_PRESSURE)),
                new Act.Next(Optional.of("short runners"), Optional.empty()),
                new Act.Next(Optional.empty(), Optional.of("e85")));
    }

    @ParameterizedTest
    @MethodSource("acts")
    void anActIsReadAsItWasWrittenAndIsOneLine(Act act) {
        String line = ActLine.write(act);
        assertThat(line).doesNotContain("\n", "\r");
        assertThat(ActLine.read(line)).contains(act);
    }

    @Test
    void aLineIsReadableByAPerson() {
        assertThat(ActLine.write(new Act.Strike(3, "clutch slipped"))).isEqualTo("strike\tpull=3\ttext=clutch slipped");
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
        assertThat(ActLine.read(line)).isEmpty();
    }
}
