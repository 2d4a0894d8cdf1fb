package org.nextpull.plan.text;

import java.util.Optional;
import org.nextpull.plan.MixturePlan;
import org.nextpull.plan.Step;
import org.nextpull.unit.Lambda;

/** Table {@code [mixture]}. */
final class MixtureTable {
    private static final Bounds.Keys KEYS = new Bounds.Keys("start_lambda", "richest_lambda", "leanest_lambda");
    private static final Step USUAL = new Step(MixturePlan.LARGEST_STEP_LAMBDA, MixturePlan.RESOLUTION_LAMBDA);

    private MixtureTable() {}

    static Optional<MixturePlan> read(TableReader table) {
        Optional<Step> step = StepKeys.LAMBDA.read(table, USUAL);
        double sparkBackDeg = table.number("spark_back_deg", new Range(0, 20), MixturePlan.SPARK_BACK_DEG);
        table.know(KEYS.all());
        if (!table.isPresent()) {
            return Optional.empty();
        }
        Optional<Bounds> bounds = Bounds.read(table, KEYS, Range.LAMBDA);
        return bounds.flatMap(lambda -> step.map(steps -> new MixturePlan(
                Lambda.of(lambda.start()), Lambda.of(lambda.low()), Lambda.of(lambda.high()), steps, sparkBackDeg)));
    }

    static String write(MixturePlan mixture) {
        TableWriter table = new TableWriter("[mixture]");
        table.number("start_lambda", mixture.start().value());
        table.number("richest_lambda", mixture.richest().value());
        table.number("leanest_lambda", mixture.leanest().value());
        StepKeys.LAMBDA.write(table, mixture.step());
        table.number("spark_back_deg", mixture.sparkBackDeg());
        return table.written();
    }
}
