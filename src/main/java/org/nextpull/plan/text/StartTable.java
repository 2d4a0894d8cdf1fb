package org.nextpull.plan.text;

import org.nextpull.plan.StartConditions;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Unit;

/** Table {@code [start]}. */
final class StartTable {
    private static final PlanKey<StartConditions.TemperatureWindow> COOLANT =
            PlanKey.of("coolant_c", window()).said("Coolant", "Low to high, as in 80 to 95.");
    private static final PlanKey<StartConditions.TemperatureWindow> OIL =
            PlanKey.of("oil_c", window()).said("Oil", "Low to high.");
    private static final PlanKey<StartConditions.TemperatureWindow> INLET =
            PlanKey.of("inlet_c", window()).said("Inlet air", "Low to high.");
    private static final PlanKey<Double> COOL_DOWN = PlanKey.of(
                    "cool_down_s", KeyFormat.number(Unit.SECOND, new Range(0, 86_400)))
            .said("Cool down", "Least time between pulls.");

    static final PlanTable<StartConditions> TABLE = PlanTable.of(
            "start",
            Presence.ALWAYS,
            "Before a pull",
            "What must hold before the throttle opens, so that pulls can be compared.",
            keys -> keys.maybe(COOLANT, StartConditions::coolant)
                    .maybe(OIL, StartConditions::oil)
                    .maybe(INLET, StartConditions::inlet)
                    .number(COOL_DOWN, StartConditions::coolDownS));

    private StartTable() {}

    private static KeyFormat<StartConditions.TemperatureWindow> window() {
        return KeyFormat.celsiusWindow(Range.ANY_CELSIUS);
    }

    static StartConditions read(TableReader table) {
        return new StartConditions(table.find(COOLANT), table.find(OIL), table.find(INLET), table.number(COOL_DOWN));
    }
}
