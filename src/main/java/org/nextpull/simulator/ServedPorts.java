package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.PortOpener;
import org.nextpull.intake.serial.WireSettings;
import org.nextpull.plan.PortFacts;
import org.nextpull.plan.WireFacts;

/**
 * The wires that an order names, before their ports are opened.
 *
 * @param order the order
 * @param wires one for each port
 * @param formats how each carries its rows
 */
record ServedPorts(ServeOrder order, List<WireFacts> wires, List<WireFormat> formats) {
    ServedPorts {
        wires = List.copyOf(wires);
        formats = List.copyOf(formats);
    }

    /** Joins the ports of an order with the wires of its plan; a plan without any is one usual wire whose logger sends a header. */
    static Outcome<ServedPorts> of(ServeOrder order, RigKit kit) {
        List<WireFacts> wires = order.plan().wires().isEmpty()
                ? List.of(
                        new WireFacts(Optional.empty(), PortFacts.defaults(), WireFacts.Lines.SEPARATED, List.of(), 0))
                : order.plan().wires();
        if (wires.size() != order.ports().size()) {
            return Outcome.failed(Finding.error(
                    FindingCode.RIG_PORTS_DIFFER,
                    Place.nowhere(),
                    Detail.of("wires", wires.size()),
                    Detail.of("ports", order.ports().size())));
        }
        WireFormats known = new WireFormats(kit, order.plan().log().hints());
        List<WireFormat> formats = new ArrayList<>();
        List<Finding> wrong = new ArrayList<>();
        for (WireFacts wire : wires) {
            Outcome<WireFormat> format = known.of(wire);
            format.value().ifPresent(formats::add);
            wrong.addAll(format.findings());
        }
        return wrong.isEmpty() ? Outcome.of(new ServedPorts(order, wires, formats)) : Outcome.failed(wrong);
    }

    /** What must be measured for the lines. */
    Set<Role> roles() {
        Set<Role> roles = new LinkedHashSet<>();
        roles.add(Role.TIME);
        formats.forEach(format -> roles.addAll(format.roles()));
        return roles;
    }

    /** Opens all ports, or none and says why. What goes wrong with them afterwards is said on threads of their own. */
    Outcome<List<ServedWire>> open(PortOpener opener, double sampleHz, Consumer<Finding> said) {
        List<Port> opened = new ArrayList<>();
        List<ServedWire> served = new ArrayList<>();
        for (int index = 0; index < wires.size(); index++) {
            WireSettings settings =
                    settings(order.ports().get(index), wires.get(index).port());
            Outcome<Port> port = opener.open(settings);
            if (port.value().isEmpty()) {
                opened.forEach(Port::close);
                return Outcome.failed(port.findings());
            }
            opened.add(port.value().get());
            served.add(new ServedWire(
                    formats.get(index),
                    settings,
                    new ServedWire.Pace(
                            sampleHz, order.speed(), wires.get(index).delayS()),
                    new PortFeed(settings.device(), port.value().get(), said)));
        }
        return Outcome.of(served);
    }

    private static WireSettings settings(String device, PortFacts port) {
        return new WireSettings(device, port);
    }
}
