package org.nextpull.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.serial.Port;
import org.nextpull.plan.WireFacts;

class PlanPortsTest {
    private static final String TWO = """
            [[wire]]
            device = "/dev/brake"
            columns = ["rpm", "torque"]
            [[wire]]
            device = "/dev/wideband"
            baud = 9600
            bits = 7
            parity = "even"
            lines = "pairs"
            delay_s = 0.3
            """;

    private static List<LiveIntake.Wire> ports(String plan, String device) {
        return PlanPorts.of(HandDriven.plan(plan), Optional.ofNullable(device).filter(name -> !name.isEmpty()))
                .value()
                .orElseThrow()
                .ports();
    }

    private static List<FindingCode> wrong(String plan, String device) {
        return PlanPorts.of(HandDriven.plan(plan), Optional.of(device).filter(name -> !name.isEmpty()))
                .findings()
                .stream()
                .map(Finding::code)
                .toList();
    }

    @Test
    void withoutAWireTheNamedPortSendsLinesUnderAHeaderAtTheUsualSpeed() {
        LiveIntake.Wire port = ports("", "COM3").get(0);
        assertThat(port.wire()).isEqualTo(Port.Settings.usual("COM3", 115_200));
        assertThat(port.lines().columns()).isEmpty();
        assertThat(port.lines().kind()).isEqualTo(WireFacts.Lines.SEPARATED);
    }

    @Test
    void theNamedPortGoesBeforeTheDeviceOfTheOnlyWire() {
        assertThat(ports("[[wire]]\ndevice = \"/dev/a\"\n", "/dev/b")
                        .get(0)
                        .wire()
                        .device())
                .isEqualTo("/dev/b");
        assertThat(ports("[[wire]]\ndevice = \"/dev/a\"\n", "").get(0).wire().device())
                .isEqualTo("/dev/a");
    }

    @Test
    void severalWiresAreAllReadAsThePlanDescribesThem() {
        List<LiveIntake.Wire> ports = ports(TWO, "");
        assertThat(ports).extracting(port -> port.wire().device()).containsExactly("/dev/brake", "/dev/wideband");
        assertThat(ports.get(1).wire().port().text()).isEqualTo("9600 7E1");
        assertThat(ports.get(1).lines().kind()).isEqualTo(WireFacts.Lines.PAIRS);
        assertThat(ports.get(1).lines().delayS()).isEqualTo(0.3);
        assertThat(ports.get(1).lines().byteNs())
                .isEqualTo(ports.get(1).wire().port().byteNs());
        assertThat(ports(TWO, "/dev/brake")).isEqualTo(ports);
    }

    @Test
    void aPortThatNoWireIsForAndAWireWithoutAPortAreErrors() {
        assertThat(wrong(TWO, "/dev/other")).containsExactly(FindingCode.LIVE_PORT_OF_NO_WIRE);
        assertThat(wrong("", "")).containsExactly(FindingCode.WIRE_WITHOUT_NAME);
    }
}
