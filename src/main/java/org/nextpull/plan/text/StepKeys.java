package org.nextpull.plan.text;

import java.util.Optional;
import org.nextpull.finding.Severity;
import org.nextpull.plan.Step;

/** The keys of a sweep's largest step and of what can be set. */
record StepKeys(PlanKey<Double> largest, PlanKey<Double> resolution) {
    /** Empty when the two contradict. */
    Optional<Step> read(TableReader table) {
        double largestStep = table.get(largest);
        double finest = table.get(resolution);
        if (finest > largestStep) {
            table.problems().order(Severity.ERROR, table.spot(resolution), "not above", table.spot(largest));
            return Optional.empty();
        }
        return Optional.of(new Step(largestStep, finest));
    }
}
