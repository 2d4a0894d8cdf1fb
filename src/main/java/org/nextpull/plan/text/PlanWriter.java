package org.nextpull.plan.text;

import java.util.stream.Collectors;
import org.nextpull.plan.SweepPlan;

/** Writes a plan as text that {@link PlanText} reads back equal. Defaults are written out, so that the text says all that holds. */
public final class PlanWriter {
    private PlanWriter() {}

    public static String write(SweepPlan plan) {
        String text = EngineTable.write(plan.engine())
                + FuelTable.write(plan.fuel())
                + DynoTable.write(plan.dyno())
                + AirTable.write(plan.air())
                + plan.band().map(BandTable::write).orElse("")
                + PullTable.write(plan.pull())
                + plan.timing().map(TimingTable::write).orElse("")
                + plan.mixture().map(MixtureTable::write).orElse("")
                + LimitsTable.write(plan.limits())
                + StartTable.write(plan.start())
                + GoalTable.write(plan.goal())
                + LogTable.write(plan.log())
                + plan.wires().stream().map(WireTables::write).collect(Collectors.joining());
        return text.stripTrailing() + "\n";
    }
}
