package org.nextpull.plan.text;

import org.nextpull.plan.StartWindow;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Unit;

/** Table {@code [start]}. */
final class StartTable {
    private static final PlanKey<StartWindow.TemperatureWindow> COOLANT =
            PlanKey.of("coolant_c", window()).said("Coolant", "Low to high, as in 80 to 95.");
    private static final PlanKey<StartWindow.TemperatureWindow> OIL =
            PlanKey.of("oil_c", window()).said("Oil", "Low to high.");
    private static final PlanKey<StartWindow.TemperatureWindow> INLET =
            PlanKey.of("inlet_c", window()).said("Inlet air", "Low to high.");
    private static final PlanKey<Double> COOL_DOWN = PlanKey.of(
                    "cool_down_s", KeyFormat.number(Unit.SECOND, new Range(0, 86_400)))
            .said("Cool down", "Least time between pulls.");

    static final PlanTable<StartWindow> TABLE = PlanTable.<StartWindow>of(
                    "start",
                    Presence.ALWAYS,
                    "Before a pull",
                    "What must hold before the throttle opens, so that pulls can be compared.")
            .maybe(COOLANT, StartWindow::coolant)
            .maybe(OIL, StartWindow::oil)
            .maybe(INLET, StartWindow::inlet)
            .number(COOL_DOWN, StartWindow::coolDownS);

    private StartTable() {}

    private static KeyFormat<StartWindow.TemperatureWindow> window() {
        return KeyFormat.celsiusWindow(Range.ANY_CELSIUS);
    }

    static StartWindow read(TableReader table) {
        return new StartWindow(table.find(COOLANT), table.find(OIL), table.find(INLET), table.number(COOL_DOWN));
    }
}
