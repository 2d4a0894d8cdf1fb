package org.nextpull.plan.text;

import java.util.Map;
import java.util.Optional;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.Limit;
import org.nextpull.plan.Limits;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;

/** Table {@code [limits]}. */
final class LimitsTable {
    static final PlanKey<Double> MOST_RPM = PlanKey.of("most_rpm", KeyFormat.number(Unit.RPM, Range.RPM))
            .said("Highest speed", "Highest engine speed; not below the top of the band.");
    static final PlanKey<Lambda> LEAN = PlanKey.of("lean_lambda", KeyFormat.lambda())
            .said("Lean alarm", "Leanest reading of any sensor at full load.");

    private static final PlanKey<Integer> KNOCK_EVENTS = PlanKey.of(
                    "knock_events", KeyFormat.whole(new Range(1, 1_000_000)))
            .said(
                    "Knock events",
                    "Events in one stretch under load that are knock, for alarm, mark and block alike; the first one is where this is empty.");
    private static final PlanKey<Double> KNOCK_LEVEL = PlanKey.of(
                    "knock_level", KeyFormat.number(new Range(0, 1_000_000)))
            .said(
                    "Knock level",
                    "Level of a graded knock sensor, in the scale of the log, above which a row is one event; where this is empty a level tells nothing.");
    private static final PlanKey<Double> KNOCK_MARGIN = PlanKey.of(
                    "knock_margin_deg", KeyFormat.number(Unit.DEGREE, new Range(0, 20)))
            .usual(Limits.KNOCK_MARGIN_DEG)
            .said("Knock margin", "How far to stay below an advance at which knock was heard.");
    private static final PlanKey<Boolean> LOOK_AGAIN = PlanKey.of("look_again", KeyFormat.flag())
            .usual(false)
            .said(
                    "Look again",
                    "Whether the speed of a knock flag that rang alone may be run again, first a degree below it, then at it; two clean pulls there clear the flag. Only where a pull that knocks once more does no harm.");
    private static final PlanKey<Double> LEAN_FOR = PlanKey.of(
                    "lean_for_s", KeyFormat.number(Unit.SECOND, new Range(0, 60)))
            .usual(Limits.Lean.FOR_S)
            .said("Lean for", "How long `lean_lambda` may be passed before it counts; a single sample is often noise.");
    private static final PlanKey<Temperature> EXHAUST = PlanKey.of("exhaust_c", KeyFormat.celsius(new Range(100, 1400)))
            .said("Exhaust", "Exhaust gas, any sensor. A thermocouple lags a short pull, so leave room.");
    private static final PlanKey<Temperature> COOLANT =
            PlanKey.of("coolant_c", KeyFormat.celsius(new Range(20, 200))).said("Coolant", "Highest.");
    private static final PlanKey<Temperature> OIL =
            PlanKey.of("oil_c", KeyFormat.celsius(new Range(20, 250))).said("Oil", "Highest.");
    private static final PlanKey<Temperature> INLET =
            PlanKey.of("inlet_c", KeyFormat.celsius(new Range(-40, 200))).said("Inlet air", "Highest.");
    private static final PlanKey<Pressure> OIL_PRESSURE = PlanKey.of(
                    "oil_pressure_kpa", KeyFormat.kilopascals(new Range(1, 2000)))
            .said("Min oil pressure", "As logged, from the lowest speed of the band up.");
    private static final PlanKey<Pressure> FUEL_PRESSURE = PlanKey.of(
                    "fuel_pressure_kpa", KeyFormat.kilopascals(new Range(1, 100_000)))
            .said("Min fuel pressure", "As logged, at full load; a falling fuel pressure runs an engine lean.");
    private static final PlanKey<Pressure> BOOST = PlanKey.of("boost_kpa", KeyFormat.kilopascals(new Range(1, 1000)))
            .said("Boost", "Manifold pressure above the barometer.");
    private static final PlanKey<Double> INJECTOR_DUTY = PlanKey.of(
                    "injector_duty_percent", KeyFormat.number(Unit.PERCENT, new Range(1, 100)))
            .said("Injector duty", "Highest; near full duty the mixture can no longer be held.");

    static final PlanTable<Limits> TABLE = PlanTable.of(
            "limits",
            Presence.ALWAYS,
            "Limits",
            "What ends a pull or a sweep. What is left empty is not watched.",
            keys -> keys.maybe(
                            KNOCK_EVENTS,
                            limits -> limits.knockEvents().stream().boxed().findFirst())
                    .number(KNOCK_LEVEL, Limits::knockLevel)
                    .key(KNOCK_MARGIN, Limits::knockMarginDeg)
                    .key(LOOK_AGAIN, Limits::looksAgain)
                    .number(MOST_RPM, Limits::mostRpm)
                    .maybe(LEAN, limits -> limits.lean().map(Limits.Lean::leanest))
                    .maybe(LEAN_FOR, limits -> limits.lean().map(Limits.Lean::forS))
                    .maybe(EXHAUST, limits -> limits.most().exhaust())
                    .maybe(COOLANT, limits -> limits.most().coolant())
                    .maybe(OIL, limits -> limits.most().oil())
                    .maybe(INLET, limits -> limits.most().inlet())
                    .maybe(OIL_PRESSURE, Limits::oilPressureLeast)
                    .maybe(FUEL_PRESSURE, Limits::fuelPressureLeast)
                    .maybe(BOOST, Limits::boostMost)
                    .number(INJECTOR_DUTY, Limits::injectorDutyMost));

    /** The key that sets each limit. */
    static final Map<Limit, PlanKey<?>> KEYS = Map.ofEntries(
            Map.entry(Limit.KNOCK, KNOCK_EVENTS),
            Map.entry(Limit.LEAN, LEAN),
            Map.entry(Limit.EXHAUST, EXHAUST),
            Map.entry(Limit.COOLANT, COOLANT),
            Map.entry(Limit.OIL, OIL),
            Map.entry(Limit.INLET_AIR, INLET),
            Map.entry(Limit.OIL_PRESSURE, OIL_PRESSURE),
            Map.entry(Limit.FUEL_PRESSURE, FUEL_PRESSURE),
            Map.entry(Limit.BOOST, BOOST),
            Map.entry(Limit.SPEED, MOST_RPM),
            Map.entry(Limit.INJECTOR_DUTY, INJECTOR_DUTY));

    private LimitsTable() {}

    static Limits read(TableReader table) {
        return new Limits(
                table.find(KNOCK_EVENTS).stream().mapToInt(Integer::intValue).findFirst(),
                table.number(KNOCK_LEVEL),
                table.get(KNOCK_MARGIN),
                table.get(LOOK_AGAIN),
                table.number(MOST_RPM),
                lean(table),
                new Limits.Temperatures(table.find(EXHAUST), table.find(COOLANT), table.find(OIL), table.find(INLET)),
                table.find(OIL_PRESSURE),
                table.find(FUEL_PRESSURE),
                table.find(BOOST),
                table.number(INJECTOR_DUTY));
    }

    private static Optional<Limits.Lean> lean(TableReader table) {
        double forS = table.get(LEAN_FOR);
        if (!table.has(LEAN) && table.has(LEAN_FOR)) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(LEAN), table.spot(LEAN_FOR));
        }
        return table.find(LEAN).map(leanest -> new Limits.Lean(leanest, forS));
    }
}
