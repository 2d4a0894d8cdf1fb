package org.nextpull.plan.text;

import java.util.Optional;
import org.nextpull.finding.Severity;
import org.nextpull.plan.Step;

/** The keys {@code largest_step_...} and {@code resolution_...} of a sweep. */
record StepKeys(String unit, Range largest, Range resolution) {
    static final StepKeys DEG = new StepKeys("deg", new Range(0.05, 15), new Range(0.01, 5));
    static final StepKeys LAMBDA = new StepKeys("lambda", new Range(0.001, 0.3), new Range(0.0001, 0.1));

    /** Empty when the two contradict. */
    Optional<Step> read(TableReader table, Step usual) {
        double largestStep = table.number(largestKey(), largest, usual.largest());
        double finest = table.number(resolutionKey(), resolution, usual.resolution());
        if (finest > largestStep) {
            table.problems()
                    .order(
                            Severity.ERROR,
                            table.spot(resolutionKey(), Shown.number(finest)),
                            "not above",
                            table.spot(largestKey(), Shown.number(largestStep)));
            return Optional.empty();
        }
        return Optional.of(new Step(largestStep, finest));
    }

    void write(TableWriter table, Step step) {
        table.number(largestKey(), step.largest());
        table.number(resolutionKey(), step.resolution());
    }

    private String largestKey() {
        return "largest_step_" + unit;
    }

    private String resolutionKey() {
        return "resolution_" + unit;
    }
}
