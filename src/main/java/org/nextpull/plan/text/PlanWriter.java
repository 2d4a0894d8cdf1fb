package org.nextpull.plan.text;

import java.util.List;
import java.util.stream.Collectors;
import org.nextpull.plan.SweepPlan;

/** Writes a plan as text that {@link PlanText} reads back equal. Defaults are written out, so that the text says all that holds. */
public final class PlanWriter {
    private PlanWriter() {}

    public static String write(SweepPlan plan) {
        String text = EngineTable.TABLE.write(plan.engine())
                + FuelTable.TABLE.write(plan.fuel())
                + all(BlendTables.TABLE, plan.fuel().own())
                + all(CandidateTables.TABLE, plan.candidates())
                + DynoTable.TABLE.write(plan.dyno())
                + AirTable.TABLE.write(plan.air())
                + all(BandTable.TABLE, plan.band().stream().toList())
                + PullTable.TABLE.write(plan.pull())
                + all(TimingTable.TABLE, plan.timing().stream().toList())
                + all(MixtureTable.TABLE, plan.mixture().stream().toList())
                + LimitsTable.TABLE.write(plan.limits())
                + StartTable.TABLE.write(plan.start())
                + SheetTable.TABLE.write(plan.sheet())
                + GoalTable.TABLE.write(plan.goal())
                + LogTable.TABLE.write(plan.log())
                + all(WireTables.TABLE, plan.wires());
        return text.stripTrailing() + "\n";
    }

    private static <R> String all(PlanTable<R> table, List<R> members) {
        return members.stream().map(table::write).collect(Collectors.joining());
    }
}
