package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.PortFacts;
import org.nextpull.plan.PortFacts.Flow;
import org.nextpull.plan.PortFacts.Parity;
import org.nextpull.plan.PortFacts.Stop;
import org.nextpull.plan.WireFacts;
import org.nextpull.plan.WireFacts.Lines;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Unit;

/** The list of tables {@code [[wire]]}. */
final class WireTables {
    private static final PortFacts USUAL = PortFacts.defaults();
    private static final PlanKey<String> DEVICE = PlanKey.of("device", KeyFormat.text())
            .said("Port", "Needed where there are several; else the port that you choose on the day is used.");
    private static final PlanKey<Integer> BAUD = PlanKey.of("baud", KeyFormat.whole(new Range(50, 20_000_000)))
            .in("1/s")
            .usual(USUAL.baud())
            .said("Baud", "As the logger is set.");
    private static final PlanKey<Integer> BITS = PlanKey.of("bits", KeyFormat.whole(new Range(5, 8)))
            .usual(USUAL.bits())
            .said("Data bits", "5 to 8; nearly always 8.");
    private static final PlanKey<Parity> PARITY = PlanKey.of("parity", KeyFormat.word(Parity.class))
            .usual(USUAL.parity())
            .said("Parity", "Nearly always none.");
    private static final PlanKey<Stop> STOP =
            PlanKey.of("stop", stopBits()).usual(USUAL.stop()).said("Stop bits", "Nearly always 1.");
    private static final PlanKey<Flow> FLOW = PlanKey.of("flow", KeyFormat.word(Flow.class))
            .usual(USUAL.flow())
            .said("Flow control", "Nearly always none.");
    private static final PlanKey<Lines> LINES = PlanKey.of("lines", KeyFormat.word(Lines.class))
            .usual(Lines.SEPARATED)
            .said("Lines", "Values with a separator, name=value pairs, or sentences with a checksum as in NMEA 0183.");
    private static final PlanKey<List<String>> COLUMNS = PlanKey.of(
                    "columns", KeyFormat.texts().allowing("header texts"))
            .said(
                    "Columns",
                    "The fields in order with units, as in: rpm, torque [N.m]. Needed with sentences, not used with pairs;"
                            + " empty where the logger sends a header line.");
    private static final PlanKey<Double> DELAY = PlanKey.of("delay_s", KeyFormat.number(Unit.SECOND, new Range(0, 60)))
            .usual(0.0)
            .said("Delay", "How much later than the other sources it reports.");

    static final PlanTable<WireFacts> TABLE = PlanTable.of(
            "wire",
            Presence.LISTED,
            "Wire",
            "A serial source.",
            keys -> keys.maybe(DEVICE, WireFacts::device)
                    .key(BAUD, wire -> wire.port().baud())
                    .key(BITS, wire -> wire.port().bits())
                    .key(PARITY, wire -> wire.port().parity())
                    .key(STOP, wire -> wire.port().stop())
                    .key(FLOW, wire -> wire.port().flow())
                    .key(LINES, WireFacts::lines)
                    .maybe(COLUMNS, wire -> Optional.of(wire.columns()).filter(columns -> !columns.isEmpty()))
                    .key(DELAY, WireFacts::delayS));

    private WireTables() {}

    private static KeyFormat<Stop> stopBits() {
        return KeyFormat.oneOfNumbers(List.of(Stop.values()), Stop::bits);
    }

    static List<WireFacts> read(List<TableReader> tables) {
        List<WireFacts> wires = new ArrayList<>();
        Set<String> devices = new HashSet<>();
        for (TableReader table : tables) {
            WireFacts wire = read(table);
            wires.add(wire);
            if (tables.size() > 1) {
                table.require(DEVICE);
            }
            if (wire.device().isPresent() && !devices.add(wire.device().get())) {
                table.problems().error(FindingCode.PLAN_NAME_TWICE, table.spot(DEVICE));
            }
        }
        return wires;
    }

    private static WireFacts read(TableReader table) {
        Lines lines = table.get(LINES);
        if (lines == Lines.PAIRS && table.has(COLUMNS)) {
            table.problems().conflict(FindingCode.PLAN_KEY_MEANINGLESS, table.spot(COLUMNS), table.spot(LINES));
        }
        if (lines == Lines.SENTENCE && !table.has(COLUMNS)) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(COLUMNS), table.spot(LINES));
        }
        PortFacts port =
                new PortFacts(table.get(BAUD), table.get(BITS), table.get(PARITY), table.get(STOP), table.get(FLOW));
        return new WireFacts(
                table.find(DEVICE), port, lines, table.find(COLUMNS).orElse(List.of()), table.get(DELAY));
    }
}
