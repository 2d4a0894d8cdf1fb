package org.nextpull.plan.text;

import java.util.Optional;
import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.Step;
import org.nextpull.plan.TimingPlan;
import org.nextpull.plan.TimingPlan.Sets;
import org.nextpull.unit.Advance;

/** Table {@code [timing]}. */
final class TimingTable {
    private static final Bounds.Keys KEYS = new Bounds.Keys("start_deg", "least_deg", "most_deg");

    private TimingTable() {}

    static Optional<TimingPlan> read(TableReader table, EngineFacts engine) {
        Sets sets = table.word("sets", Sets.FLAT);
        Step usual = new Step(TimingPlan.defaultLargestStepDeg(engine), TimingPlan.RESOLUTION_DEG);
        Optional<Step> step = StepKeys.DEG.read(table, usual);
        table.know(KEYS.all());
        if (!table.isPresent()) {
            return Optional.empty();
        }
        Optional<Bounds> bounds = Bounds.read(table, KEYS, Range.ADVANCE_DEG);
        return bounds.flatMap(deg -> step.map(steps -> new TimingPlan(
                sets, Advance.ofDeg(deg.start()), Advance.ofDeg(deg.low()), Advance.ofDeg(deg.high()), steps)));
    }

    static String write(TimingPlan timing) {
        TableWriter table = new TableWriter("[timing]");
        table.word("sets", timing.sets());
        table.number("start_deg", timing.start().deg());
        table.number("least_deg", timing.least().deg());
        table.number("most_deg", timing.most().deg());
        StepKeys.DEG.write(table, timing.step());
        return table.written();
    }
}
