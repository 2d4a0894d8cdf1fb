package org.nextpull.plan.text;

import java.util.List;

/** The tables of a plan. */
record PlanTables(
        TableReader engine,
        TableReader fuel,
        List<TableReader> blends,
        List<TableReader> candidates,
        TableReader dyno,
        TableReader air,
        TableReader band,
        TableReader pull,
        TableReader timing,
        TableReader mixture,
        TableReader limits,
        TableReader start,
        TableReader sheet,
        TableReader goal,
        TableReader log,
        List<TableReader> wires) {

    static PlanTables of(TableReader top) {
        return new PlanTables(
                top.table(EngineTable.TABLE),
                top.table(FuelTable.TABLE),
                top.tables(BlendTables.TABLE),
                top.tables(CandidateTables.TABLE),
                top.table(DynoTable.TABLE),
                top.table(AirTable.TABLE),
                top.table(BandTable.TABLE),
                top.table(PullTable.TABLE),
                top.table(TimingTable.TABLE),
                top.table(MixtureTable.TABLE),
                top.table(LimitsTable.TABLE),
                top.table(StartTable.TABLE),
                top.table(SheetTable.TABLE),
                top.table(GoalTable.TABLE),
                top.table(LogTable.TABLE),
                top.tables(WireTables.TABLE));
    }
}
