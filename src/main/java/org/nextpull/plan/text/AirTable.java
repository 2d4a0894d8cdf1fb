package org.nextpull.plan.text;

import org.nextpull.air.CorrectionStandard;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;

/** Table {@code [air]}. */
final class AirTable {
    private static final String WITHOUT = "; only used where the log has none.";
    static final PlanKey<CorrectionStandard> STANDARD = PlanKey.of("standard", standards())
            .usual(SweepPlan.AirFacts.defaults().standard())
            .said(
                    "Correction",
                    "The standard that torque and power are corrected to, one factor a pull. Compare only figures of one"
                            + " standard.");

    private static final PlanKey<Pressure> BARO = PlanKey.of("baro_kpa", KeyFormat.kilopascals(new Range(30, 120)))
            .said("Barometer", "Station pressure, not reduced to sea level" + WITHOUT);
    private static final PlanKey<Temperature> AIR = PlanKey.of("air_c", KeyFormat.celsius(new Range(-60, 80)))
            .said("Inlet air", "What the engine breathes" + WITHOUT);
    private static final PlanKey<Double> HUMIDITY = PlanKey.of(
                    "humidity_percent", KeyFormat.number(Unit.PERCENT, new Range(0, 100)))
            .said("Humidity", "Relative" + WITHOUT);

    static final PlanTable<SweepPlan.AirFacts> TABLE = PlanTable.of(
            "air",
            Presence.ALWAYS,
            "Air",
            "Correction, and the weather where the log has none.",
            keys -> keys.key(STANDARD, SweepPlan.AirFacts::standard)
                    .maybe(BARO, SweepPlan.AirFacts::baro)
                    .maybe(AIR, SweepPlan.AirFacts::air)
                    .number(HUMIDITY, SweepPlan.AirFacts::humidity));

    private AirTable() {}

    /** One of the standards by its name. */
    static KeyFormat<CorrectionStandard> standards() {
        return KeyFormat.oneOf(CorrectionStandard.all(), CorrectionStandard::id);
    }

    static SweepPlan.AirFacts read(TableReader table) {
        return new SweepPlan.AirFacts(table.get(STANDARD), table.find(BARO), table.find(AIR), table.number(HUMIDITY));
    }
}
