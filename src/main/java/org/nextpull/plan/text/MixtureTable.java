package org.nextpull.plan.text;

import java.util.Optional;
import org.nextpull.plan.MixturePlan;
import org.nextpull.plan.SweepStep;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Unit;

/** Table {@code [mixture]}. */
final class MixtureTable {
    private static final Bounds.Keys<Lambda> BOUNDS = new Bounds.Keys<>(
            PlanKey.of("start_lambda", KeyFormat.lambda())
                    .needed("needed")
                    .said("Start", "Where the mixture sweep starts."),
            PlanKey.of("richest_lambda", KeyFormat.lambda())
                    .needed("needed")
                    .said("Rich limit", "Never richer: too rich washes the bores."),
            PlanKey.of("leanest_lambda", KeyFormat.lambda())
                    .needed("needed")
                    .said("Lean limit", "Never leaner at full load, whatever the curve says."));
    private static final Bounds.StepKeys STEP = new Bounds.StepKeys(
            PlanKey.of("largest_step_lambda", KeyFormat.number(Unit.LAMBDA, new Range(0.001, 0.3)))
                    .usual(MixturePlan.LARGEST_STEP_LAMBDA)
                    .said(
                            "Max step",
                            "Never leaner than the leanest clean pull by more than this; the default is about half a point"
                                    + " of air-fuel ratio on the petrol scale."),
            PlanKey.of("resolution_lambda", KeyFormat.number(Unit.LAMBDA, new Range(0.0001, 0.1)))
                    .usual(MixturePlan.RESOLUTION_LAMBDA)
                    .said("Resolution", "What the fuelling can be set to; proposals are rounded to it, toward rich."));
    static final PlanTable<MixturePlan> TABLE = PlanTable.of(
            "mixture",
            Presence.SWITCHED,
            "Mixture",
            "The mixture sweep. Off where the mixture stays as it is.",
            keys -> keys.key(BOUNDS.start(), MixturePlan::start)
                    .key(BOUNDS.low(), MixturePlan::richest)
                    .key(BOUNDS.high(), MixturePlan::leanest)
                    .key(STEP.largest(), mixture -> mixture.step().largest())
                    .key(STEP.resolution(), mixture -> mixture.step().resolution()));

    private MixtureTable() {}

    static PlanKey<Lambda> leanest() {
        return BOUNDS.high();
    }

    static Optional<MixturePlan> read(TableReader table) {
        if (!table.isPresent()) {
            return Optional.empty();
        }
        Optional<SweepStep> step = STEP.read(table);
        return Bounds.read(table, BOUNDS)
                .flatMap(lambda ->
                        step.map(steps -> new MixturePlan(lambda.start(), lambda.low(), lambda.high(), steps)));
    }
}
