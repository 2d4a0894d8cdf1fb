package org.nextpull.live;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.plan.PortFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.WireFacts;

/** The ports that a plan describes, and the device that the user names for the one whose table names none. */
public final class PlanPorts {
    private static final long LOOK_AGAIN_MS = 250;

    private PlanPorts() {}

    /**
     * The ports of a session.
     *
     * @param plan whose {@code [[wire]]} tables describe the ports; without one, lines with a header line at the usual speed
     * @param device the device that the user named
     */
    public static Outcome<LiveIntake.Ports> of(SweepPlan plan, Optional<String> device) {
        List<WireFacts> wires = plan.wires();
        if (wires.size() > 1) {
            boolean known = device.isEmpty()
                    || wires.stream().anyMatch(wire -> wire.device().equals(device));
            return known
                    ? Outcome.of(ports(wires, device))
                    : Outcome.failed(Finding.error(
                            FindingCode.LIVE_PORT_OF_NO_WIRE,
                            Place.nowhere(),
                            Detail.of("device", device.orElse("")),
                            Detail.of("count", wires.size())));
        }
        Optional<String> named = device.or(() -> wires.stream().findFirst().flatMap(WireFacts::device));
        if (named.isEmpty()) {
            return Outcome.failed(Finding.error(FindingCode.WIRE_WITHOUT_NAME, Place.nowhere()));
        }
        if (wires.isEmpty()) {
            Port.Settings usual = Port.Settings.usual(named.get(), PortFacts.USUAL_BAUD);
            return Outcome.of(new LiveIntake.Ports(List.of(port(usual, WireSource.LineSettings.withHeaderLine()))));
        }
        return Outcome.of(ports(wires, named));
    }

    /**
     * The ports of a session that are not there, after waiting for them; empty once all are. Not for the event thread.
     *
     * @param patience how long a port that is not there yet is waited for
     */
    public static List<Finding> missing(LiveIntake intake, Port.Opener opener, Duration patience) {
        List<LiveIntake.Wire> ports = intake instanceof LiveIntake.Ports described ? described.ports() : List.of();
        for (long waitedMs = 0; ; waitedMs += LOOK_AGAIN_MS) {
            List<Finding> missing = ports.stream()
                    .flatMap(port -> opener.missing(port.wire()).stream())
                    .toList();
            if (missing.isEmpty() || waitedMs >= patience.toMillis()) {
                return missing;
            }
            try {
                Thread.sleep(LOOK_AGAIN_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return missing;
            }
        }
    }

    private static LiveIntake.Ports ports(List<WireFacts> wires, Optional<String> device) {
        List<LiveIntake.Wire> ports = new ArrayList<>();
        for (WireFacts wire : wires) {
            String name = wires.size() == 1
                    ? device.or(wire::device).orElseThrow()
                    : wire.device().orElseThrow();
            ports.add(port(settings(name, wire.port()), lines(wire)));
        }
        return new LiveIntake.Ports(ports);
    }

    private static LiveIntake.Wire port(Port.Settings wire, WireSource.LineSettings lines) {
        return new LiveIntake.Wire(
                wire,
                new WireSource.LineSettings(
                        lines.kind(),
                        lines.columns(),
                        lines.delayS(),
                        wire.port().byteNs()));
    }

    private static Port.Settings settings(String device, PortFacts facts) {
        return new Port.Settings(device, facts);
    }

    private static WireSource.LineSettings lines(WireFacts wire) {
        return new WireSource.LineSettings(wire.lines(), wire.columns(), wire.delayS(), 0);
    }
}
