package org.nextpull.plan.text;

import java.util.Optional;
import org.nextpull.plan.Step;
import org.nextpull.plan.TimingPlan;
import org.nextpull.plan.TimingPlan.Sets;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Unit;

/** Table {@code [timing]}. */
final class TimingTable {
    private static final PlanKey<Sets> SETS = PlanKey.of("sets", KeyFormat.word(Sets.class))
            .usual(Sets.FLAT)
            .said("You set", "One advance for the whole pull, or degrees added everywhere to the present map.");
    private static final Bounds.Keys<Advance> BOUNDS = new Bounds.Keys<>(
            PlanKey.of("start_deg", KeyFormat.advance())
                    .needed("needed")
                    .said(
                            "Start",
                            "Where the sweep starts: on the retarded side, where the engine is known to run clean."),
            PlanKey.of("least_deg", KeyFormat.advance())
                    .needed("needed")
                    .said("Min advance", "Never less advance: retard heats the exhaust."),
            PlanKey.of("most_deg", KeyFormat.advance())
                    .needed("needed")
                    .said("Max advance", "Never more advance, whatever the curve says."));
    private static final StepKeys STEP = new StepKeys(
            PlanKey.of("largest_step_deg", KeyFormat.number(Unit.DEGREE, new Range(0.05, 15)))
                    .usual(table -> TimingPlan.defaultLargestStepDeg(EngineTable.induction(table)))
                    .said(
                            "Max step",
                            "Never further beyond the most advanced clean pull; `1` when `induction = \"boosted\"`."),
            PlanKey.of("resolution_deg", KeyFormat.number(Unit.DEGREE, new Range(0.01, 5)))
                    .usual(TimingPlan.RESOLUTION_DEG)
                    .said(
                            "Resolution",
                            "What the ignition can be set to; proposals are rounded to it, toward retard."));

    static final PlanTable<TimingPlan> TABLE = PlanTable.<TimingPlan>of(
                    "timing", Presence.SWITCHED, "Spark timing", "The spark sweep. Off where spark stays as it is.")
            .key(SETS, TimingPlan::sets)
            .key(BOUNDS.start(), TimingPlan::start)
            .key(BOUNDS.low(), TimingPlan::least)
            .key(BOUNDS.high(), TimingPlan::most)
            .key(STEP.largest(), timing -> timing.step().largest())
            .key(STEP.resolution(), timing -> timing.step().resolution());

    private TimingTable() {}

    static Optional<TimingPlan> read(TableReader table) {
        if (!table.isPresent()) {
            return Optional.empty();
        }
        Sets sets = table.get(SETS);
        Optional<Step> step = STEP.read(table);
        return Bounds.read(table, BOUNDS)
                .flatMap(deg -> step.map(steps -> new TimingPlan(sets, deg.start(), deg.low(), deg.high(), steps)));
    }
}
