package org.nextpull.plan.text;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Unit;

/** Table {@code [log]}. */
final class LogTable {
    static final PlanKey<CorrectionStandard> CORRECTED_BY = PlanKey.of(
                    "corrected_by", AirTable.standards().allowing("as `[air] standard`"))
            .said("Corrected by", "The standard that the logged torque was corrected by already.");

    private static final PlanKey<Map<Role, String>> COLUMNS = PlanKey.of(
                    "columns",
                    KeyFormat.byRole((table, role) -> table.text(role.id()), PlanValueText::text)
                            .allowing("header texts"))
            .said("Columns", "Which column is what, where the headers do not say it: `{ torque = \"Load 1\" }`.");
    private static final PlanKey<Map<Role, Unit>> UNITS = PlanKey.of(
                    "units",
                    KeyFormat.byRole(LogTable::unit, unit -> PlanValueText.text(unit.symbol()))
                            .allowing("unit symbols"))
            .said("Units", "The unit of a column: `{ torque = \"lbf.ft\" }`.");
    private static final PlanKey<Double> AFR_SCALE = PlanKey.of("afr_scale", KeyFormat.number(new Range(1, 40)))
            .said(
                    "AFR gauge scaled to",
                    "Stoichiometric ratio of an air-fuel gauge; without it such a column gives no lambda.");
    private static final PlanKey<Double> SAMPLE_HZ = PlanKey.of(
                    "sample_hz", KeyFormat.number(new Range(0.01, 1_000_000)))
            .in("1/s")
            .said("Rows a second", "Where the log has no time.");
    private static final PlanKey<Double> LAMBDA_DELAY = PlanKey.of(
                    "lambda_delay_s", KeyFormat.number(Unit.SECOND, new Range(0, 5)))
            .said("Lambda delay", "From the valve to the reading; estimated where this is empty.");
    private static final PlanKey<String> SETTINGS = PlanKey.of(
                    "settings", KeyFormat.text().allowing("a path"))
            .said(
                    "Settings file",
                    "A file beside the plan with what was set for each pull:"
                            + " `file,pull,order,advance_deg,offset_deg,lambda,fuel,label,knock,note`.");

    static final PlanTable<SweepPlan.LogFacts> TABLE = PlanTable.of(
            "log",
            Presence.ALWAYS,
            "Log",
            "Only where the log does not say it itself. Columns and units that the plan names are kept as they are.",
            keys -> keys.maybe(COLUMNS, log -> some(log.hints().headers()))
                    .maybe(UNITS, log -> some(log.hints().units()))
                    .number(AFR_SCALE, log -> log.hints().afrScale())
                    .number(SAMPLE_HZ, log -> log.hints().sampleHz())
                    .number(LAMBDA_DELAY, SweepPlan.LogFacts::lambdaDelayS)
                    .maybe(CORRECTED_BY, SweepPlan.LogFacts::correctedBy)
                    .maybe(SETTINGS, SweepPlan.LogFacts::settings));

    private LogTable() {}

    private static <T> Optional<Map<Role, T>> some(Map<Role, T> values) {
        return values.isEmpty() ? Optional.empty() : Optional.of(values);
    }

    /** What the table holds, each column and each unit in a line of its own, so that others can be written below. */
    static List<String> lines(SweepPlan.LogFacts log) {
        LogHints hints = log.hints();
        Stream<String> columns = new TreeMap<>(hints.headers())
                .entrySet().stream().map(each -> column(each.getKey().id(), each.getValue()));
        Stream<String> units = new TreeMap<>(hints.units())
                .entrySet().stream()
                        .map(each -> "units." + each.getKey().id() + " = "
                                + PlanValueText.text(each.getValue().symbol()));
        LogHints others = new LogHints(Map.of(), Map.of(), hints.afrScale(), hints.sampleHz());
        String rest =
                TABLE.write(new SweepPlan.LogFacts(others, log.lambdaDelayS(), log.correctedBy(), log.settings()));
        return Stream.of(columns, units, rest.lines().skip(1).filter(line -> !line.isEmpty()))
                .flatMap(all -> all)
                .toList();
    }

    /** The line that names the column of a role. */
    static String column(String role, String header) {
        return COLUMNS.name() + "." + role + " = " + PlanValueText.text(header);
    }

    static SweepPlan.LogFacts read(TableReader table) {
        LogHints hints = new LogHints(
                table.find(COLUMNS).orElse(Map.of()),
                table.find(UNITS).orElse(Map.of()),
                table.number(AFR_SCALE),
                table.number(SAMPLE_HZ));
        return new SweepPlan.LogFacts(
                hints, table.number(LAMBDA_DELAY), table.find(CORRECTED_BY), table.find(SETTINGS));
    }

    private static Optional<Unit> unit(TableReader table, Role role) {
        Optional<String> symbol = table.text(role.id());
        Optional<Unit> unit = symbol.flatMap(text -> Unit.parse(text, role.quantity()));
        if (symbol.isPresent() && unit.isEmpty()) {
            table.unknownWord(table.spot(role.id()), symbol.get(), symbols(role));
        }
        return unit;
    }

    private static List<String> symbols(Role role) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.quantity() == role.quantity())
                .map(Unit::symbol)
                .toList();
    }
}
