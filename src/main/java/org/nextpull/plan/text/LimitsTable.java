package org.nextpull.plan.text;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.LeanLimit;
import org.nextpull.plan.Limits;
import org.nextpull.plan.Temperatures;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Unit;

/** Table {@code [limits]}. */
final class LimitsTable {
    private static final String LEAN = "lean_lambda";
    private static final String LEAN_FOR = "lean_for_s";

    private LimitsTable() {}

    static Limits read(TableReader table) {
        OptionalInt knockEvents = table.whole("knock_events", new Range(1, 1_000_000));
        double margin = table.number("knock_margin_deg", new Range(0, 20), Limits.KNOCK_MARGIN_DEG);
        OptionalDouble mostRpm = table.number("most_rpm", Range.RPM);
        return new Limits(
                knockEvents,
                margin,
                mostRpm,
                lean(table),
                temperatures(table),
                Si.kilopascals(table.number("oil_pressure_kpa", new Range(1, 2000))),
                Si.kilopascals(table.number("fuel_pressure_kpa", new Range(1, 100_000))),
                Si.kilopascals(table.number("boost_kpa", new Range(1, 1000))),
                Si.of(Unit.PERCENT, table.number("injector_duty_percent", new Range(1, 100))));
    }

    private static Optional<LeanLimit> lean(TableReader table) {
        OptionalDouble leanest = table.number(LEAN, Range.LAMBDA);
        double forS = table.number(LEAN_FOR, new Range(0, 60), LeanLimit.FOR_S);
        if (!table.has(LEAN) && table.has(LEAN_FOR)) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(LEAN), table.spot(LEAN_FOR));
        }
        return leanest.stream()
                .mapToObj(lambda -> new LeanLimit(Lambda.of(lambda), forS))
                .findFirst();
    }

    private static Temperatures temperatures(TableReader table) {
        return new Temperatures(
                Si.celsius(table.number("exhaust_c", new Range(100, 1400))),
                Si.celsius(table.number("coolant_c", new Range(20, 200))),
                Si.celsius(table.number("oil_c", new Range(20, 250))),
                Si.celsius(table.number("inlet_c", new Range(-40, 200))));
    }

    static String write(Limits limits) {
        TableWriter table = new TableWriter("[limits]");
        limits.knockEvents().ifPresent(events -> table.number("knock_events", events));
        table.number("knock_margin_deg", limits.knockMarginDeg());
        table.number("most_rpm", limits.mostRpm());
        limits.lean().ifPresent(lean -> {
            table.number(LEAN, lean.leanest().value());
            table.number(LEAN_FOR, lean.forS());
        });
        table.quantity("exhaust_c", Unit.CELSIUS, Si.kelvins(limits.most().exhaust()));
        table.quantity("coolant_c", Unit.CELSIUS, Si.kelvins(limits.most().coolant()));
        table.quantity("oil_c", Unit.CELSIUS, Si.kelvins(limits.most().oil()));
        table.quantity("inlet_c", Unit.CELSIUS, Si.kelvins(limits.most().inlet()));
        table.quantity("oil_pressure_kpa", Unit.KILOPASCAL, Si.pascals(limits.oilPressureLeast()));
        table.quantity("fuel_pressure_kpa", Unit.KILOPASCAL, Si.pascals(limits.fuelPressureLeast()));
        table.quantity("boost_kpa", Unit.KILOPASCAL, Si.pascals(limits.boostMost()));
        table.quantity("injector_duty_percent", Unit.PERCENT, limits.injectorDutyMost());
        return table.written();
    }
}
