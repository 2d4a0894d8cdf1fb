package org.nextpull.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

class LogTextTest {
    private static Samples samples() {
        List<Channel> channels = List.of(
                Channel.of(Role.TIME),
                Channel.of(Role.TORQUE),
                Channel.of(Role.THROTTLE),
                Channel.of(Role.OIL_TEMPERATURE),
                Channel.of(Role.BAROMETER));
        return Samples.builder(channels)
                .row(1, Optional.of("before"), Optional.of("e10"))
                .set(0, 0.25)
                .set(1, 135.58179483314)
                .set(2, 1)
                .set(3, 373.15)
                .set(4, 101325)
                .row(2)
                .set(0, 0.5)
                .build();
    }

    private static List<String> lines(LogDialect dialect, List<Role> words) {
        return LogText.of(List.of(samples()), dialect, words, List.of("a remark"))
                .lines()
                .toList();
    }

    @Test
    void plainHasCommasAndUnitsInBrackets() {
        assertThat(lines(LogDialect.PLAIN, List.of(Role.LABEL)))
                .containsExactly(
                        "# a remark",
                        "Time [s],Torque [N.m],Throttle [%],Oil temp [degC],Baro [kPa],Label",
                        "0.250,135.6,100.0,100.0,101.33,before",
                        "0.500,,,,,");
    }

    @Test
    void semicolonHasDecimalCommasAndARowOfUnits() {
        assertThat(lines(LogDialect.SEMICOLON, List.of()))
                .containsExactly(
                        "# a remark",
                        "Time;Torque;Throttle;Oil temp;Baro",
                        "s;N.m;%;degC;kPa",
                        "0,250;135,6;100,0;100,0;101,33",
                        "0,500;;;;");
    }

    /** 1 lbf.ft is 1.3558179483314 N.m, 100 degC are 212 degF, 1 atm is 29.92 inHg. */
    @Test
    void tabbedHasUsUnits() {
        assertThat(lines(LogDialect.TABBED_US, List.of(Role.FUEL)).get(2))
                .isEqualTo("0.250\t100.0\t100.0\t212.0\t29.92\te10");
    }

    @Test
    void compactHasTheUnitBehindTheName() {
        assertThat(lines(LogDialect.COMPACT, List.of()).get(1))
                .isEqualTo("time_s,torque_nm,throttle_percent,oil_temp_degc,baro_kpa");
    }
}
