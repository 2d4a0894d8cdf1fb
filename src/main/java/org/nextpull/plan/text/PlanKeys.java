package org.nextpull.plan.text;

import java.util.List;

/** The one list of all that a plan can say, in the order of the handbook. */
public final class PlanKeys {
    private static final List<PlanTable<?>> TABLES = List.of(
            EngineTable.TABLE,
            FuelTable.TABLE,
            BlendTables.TABLE,
            DynoTable.TABLE,
            AirTable.TABLE,
            BandTable.TABLE,
            PullTable.TABLE,
            TimingTable.TABLE,
            MixtureTable.TABLE,
            LimitsTable.TABLE,
            StartTable.TABLE,
            SheetTable.TABLE,
            GoalTable.TABLE,
            LogTable.TABLE,
            WireTables.TABLE);

    private PlanKeys() {}

    public static List<PlanTable<?>> tables() {
        return TABLES;
    }

    static List<String> tableNames() {
        return TABLES.stream().map(PlanTable::name).toList();
    }
}
