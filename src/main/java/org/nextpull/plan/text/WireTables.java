package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.PortFacts;
import org.nextpull.plan.PortFacts.Stop;
import org.nextpull.plan.WireFacts;
import org.nextpull.plan.WireFacts.Lines;

/** The list of tables {@code [[wire]]}. */
final class WireTables {
    private static final String DEVICE = "device";
    private static final String COLUMNS = "columns";
    private static final String LINES = "lines";
    private static final String STOP = "stop";
    private static final String DELAY = "delay_s";

    private WireTables() {}

    static List<WireFacts> read(List<TableReader> tables) {
        List<WireFacts> wires = new ArrayList<>();
        Set<String> devices = new HashSet<>();
        for (TableReader table : tables) {
            WireFacts wire = read(table);
            wires.add(wire);
            if (tables.size() > 1 && !table.has(DEVICE)) {
                table.need(DEVICE);
            }
            if (wire.device().isPresent() && !devices.add(wire.device().get())) {
                table.problems().error(FindingCode.PLAN_NAME_TWICE, table.spot(DEVICE));
            }
        }
        return wires;
    }

    private static WireFacts read(TableReader table) {
        Optional<String> device = table.text(DEVICE);
        Lines lines = table.word(LINES, Lines.SEPARATED);
        List<String> columns = table.texts(COLUMNS);
        if (lines == Lines.PAIRS && table.has(COLUMNS)) {
            table.problems().conflict(FindingCode.PLAN_KEY_MEANINGLESS, table.spot(COLUMNS), table.spot(LINES));
        }
        if (lines == Lines.SENTENCE && !table.has(COLUMNS)) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(COLUMNS), table.spot(LINES));
        }
        return new WireFacts(device, port(table), lines, columns, table.number(DELAY, new Range(0, 60), 0));
    }

    private static PortFacts port(TableReader table) {
        PortFacts usual = PortFacts.defaults();
        return new PortFacts(
                table.whole("baud", new Range(50, 20_000_000), usual.baud()),
                table.whole("bits", new Range(5, 8), usual.bits()),
                table.word("parity", usual.parity()),
                stop(table),
                table.word("flow", usual.flow()));
    }

    private static Stop stop(TableReader table) {
        OptionalDouble bits = table.number(STOP, new Range(1, 2));
        Optional<Stop> stop = Arrays.stream(Stop.values())
                .filter(candidate -> candidate.bits() == bits.orElse(Stop.ONE.bits()))
                .findFirst();
        if (stop.isEmpty()) {
            table.problems()
                    .error(
                            FindingCode.PLAN_UNKNOWN_WORD,
                            table.spot(STOP),
                            Detail.of(
                                    "allowed",
                                    Arrays.stream(Stop.values())
                                            .map(allowed -> Shown.number(allowed.bits()))
                                            .collect(Collectors.joining(", "))));
        }
        return stop.orElse(Stop.ONE);
    }

    static String write(WireFacts wire) {
        TableWriter table = new TableWriter("[[wire]]");
        table.text(DEVICE, wire.device());
        table.number("baud", wire.port().baud());
        table.number("bits", wire.port().bits());
        table.word("parity", wire.port().parity());
        table.number(STOP, wire.port().stop().bits());
        table.word("flow", wire.port().flow());
        table.word(LINES, wire.lines());
        table.texts(COLUMNS, wire.columns());
        table.number(DELAY, wire.delayS());
        return table.written();
    }
}
