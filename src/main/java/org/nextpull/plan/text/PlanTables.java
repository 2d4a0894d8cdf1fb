package org.nextpull.plan.text;

import java.util.List;

/** The tables of a plan. */
record PlanTables(
        TableReader engine,
        TableReader fuel,
        List<TableReader> blends,
        TableReader dyno,
        TableReader air,
        TableReader band,
        TableReader pull,
        TableReader timing,
        TableReader mixture,
        TableReader limits,
        TableReader start,
        TableReader goal,
        TableReader log,
        List<TableReader> wires) {

    static PlanTables of(TableReader top) {
        return new PlanTables(
                top.table("engine"),
                top.table("fuel"),
                top.tables("blend"),
                top.table("dyno"),
                top.table("air"),
                top.table("band"),
                top.table("pull"),
                top.table("timing"),
                top.table("mixture"),
                top.table("limits"),
                top.table("start"),
                top.table("goal"),
                top.table("log"),
                top.tables("wire"));
    }
}
