package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.ColumnTable;
import org.nextpull.intake.MappedColumn;
import org.nextpull.intake.NumberStyle;
import org.nextpull.intake.ProbeColumn;
import org.nextpull.intake.serial.Port;
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
    static Outcome<ServedPorts> of(ServeOrder order, SimulatedDyno kit) {
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
    Outcome<List<ServedWire>> open(Port.Opener opener, double sampleHz, Consumer<Finding> said) {
        List<Port> opened = new ArrayList<>();
        List<ServedWire> served = new ArrayList<>();
        for (int index = 0; index < wires.size(); index++) {
            Port.Settings settings =
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

    private static Port.Settings settings(String device, PortFacts port) {
        return new Port.Settings(device, port);
    }

    /** Works out what the lines of a plan's wires are to carry: their columns are understood as the reader of the wire understands them. */
    private static final class WireFormats {
        private static final String NO_COLUMN = "-";
        private static final ProbeColumn NOTHING = ProbeColumn.of(List.of(), NumberStyle.point());

        private final SimulatedDyno kit;
        private final LogHints hints;
        private final ColumnReader reader = new ColumnReader();

        WireFormats(SimulatedDyno kit, LogHints hints) {
            this.kit = kit;
            this.hints = hints;
        }

        /** The lines of a wire, or the columns that the model engine has nothing for. */
        Outcome<WireFormat> of(WireFacts wire) {
            boolean pairs = wire.lines() == WireFacts.Lines.PAIRS;
            if (pairs || wire.columns().isEmpty()) {
                LogDialect dialect = pairs ? LogDialect.COMPACT : LogDialect.PLAIN;
                List<Optional<WireFormat.Field>> fields = new ArrayList<>();
                for (Role role : kit.instruments().roles()) {
                    fields.add(Optional.of(WireFormat.Field.usual(role, dialect.header(role), dialect)));
                }
                return Outcome.of(new WireFormat(wire.lines(), List.of(new WireFormat.Group("", fields)), !pairs));
            }
            List<Finding> wrong = new ArrayList<>();
            List<WireFormat.Group> groups = new ArrayList<>();
            List<String> columns = new ArrayList<>();
            String address = "";
            for (String column : wire.columns()) {
                if (wire.lines() == WireFacts.Lines.SENTENCE && column.startsWith("$")) {
                    group(address, columns, groups, wrong);
                    address = column.substring(1);
                    columns.clear();
                } else {
                    columns.add(column.isBlank() ? NO_COLUMN : column);
                }
            }
            group(address, columns, groups, wrong);
            return wrong.isEmpty() ? Outcome.of(new WireFormat(wire.lines(), groups, false)) : Outcome.failed(wrong);
        }

        private void group(String address, List<String> columns, List<WireFormat.Group> groups, List<Finding> wrong) {
            if (columns.isEmpty()) {
                return;
            }
            List<ProbeColumn> probes = columns.stream().map(column -> NOTHING).toList();
            Map<Integer, MappedColumn> known = new HashMap<>();
            reader.read(new ColumnTable("[[wire]]", 1, columns, List.of(), probes), hints)
                    .mapped()
                    .forEach(column -> known.put(column.index(), column));
            List<Optional<WireFormat.Field>> fields = new ArrayList<>();
            for (int index = 0; index < columns.size(); index++) {
                Optional<WireFormat.Field> field = Optional.ofNullable(known.get(index))
                        .filter(column -> kit.measures(column.channel().role()))
                        .map(WireFormat.Field::asked);
                if (field.isEmpty() && !columns.get(index).equals(NO_COLUMN)) {
                    wrong.add(Finding.error(
                            FindingCode.RIG_COLUMN_NOT_MEASURED,
                            Place.nowhere().withKey("[[wire]] columns"),
                            Detail.of("column", columns.get(index))));
                }
                fields.add(field);
            }
            groups.add(new WireFormat.Group(address, fields));
        }
    }
}
