package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.channel.Hints;
import org.nextpull.channel.Role;
import org.nextpull.plan.LogFacts;
import org.nextpull.unit.Unit;

/** Table {@code [log]}. */
final class LogTable {
    private LogTable() {}

    static LogFacts read(TableReader table) {
        TableReader columns = table.table("columns");
        TableReader units = table.table("units");
        Hints hints = new Hints(
                byRole(columns, columns::text),
                byRole(units, key -> unit(units, key)),
                table.number("afr_scale", new Range(1, 40)),
                table.number("sample_hz", new Range(0.01, 1_000_000)));
        return new LogFacts(
                hints,
                table.number("lambda_delay_s", new Range(0, 5)),
                AirTable.standard(table, "corrected_by"),
                table.text("settings"));
    }

    private static <T> Map<Role, T> byRole(TableReader table, Function<String, Optional<T>> value) {
        table.know(Arrays.stream(Role.values()).map(Role::id).toList());
        Map<Role, T> found = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            if (table.has(role.id())) {
                value.apply(role.id()).ifPresent(present -> found.put(role, present));
            }
        }
        return found;
    }

    private static Optional<Unit> unit(TableReader table, String key) {
        Optional<String> symbol = table.text(key);
        Role role = Role.valueOf(key.toUpperCase(Locale.ROOT));
        Optional<Unit> unit = symbol.flatMap(text -> Unit.parse(text, role.quantity()));
        if (symbol.isPresent() && unit.isEmpty()) {
            table.unknownWord(table.spot(key), symbol.get(), symbols(role));
        }
        return unit;
    }

    private static List<String> symbols(Role role) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.quantity() == role.quantity())
                .map(Unit::symbol)
                .toList();
    }

    static String write(LogFacts log) {
        TableWriter table = new TableWriter("[log]");
        inline(table, "columns", log.hints().headers(), Shown::text);
        inline(table, "units", log.hints().units(), unit -> Shown.text(unit.symbol()));
        table.number("afr_scale", log.hints().afrScale());
        table.number("sample_hz", log.hints().sampleHz());
        table.number("lambda_delay_s", log.lambdaDelayS());
        table.text("corrected_by", log.correctedBy().map(CorrectionStandard::id));
        table.text("settings", log.settings());
        return table.written();
    }

    private static <T> void inline(TableWriter table, String key, Map<Role, T> values, Function<T, String> written) {
        if (!values.isEmpty()) {
            List<Map.Entry<Role, T>> sorted = new ArrayList<>(values.entrySet());
            sorted.sort(Map.Entry.comparingByKey());
            table.raw(
                    key,
                    sorted.stream()
                            .map(entry -> entry.getKey().id() + " = " + written.apply(entry.getValue()))
                            .collect(Collectors.joining(", ", "{ ", " }")));
        }
    }
}
