package org.nextpull.plan.text;

import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.plan.SweepStep;

/** A start and the two limits around it. */
record Bounds<T extends Comparable<T>>(T start, T low, T high) {

    /** The keys of the three. */
    record Keys<T extends Comparable<T>>(PlanKey<T> start, PlanKey<T> low, PlanKey<T> high) {}

    /** Reads the three needed values; empty when one is missing or wrong, or when they contradict. */
    static <T extends Comparable<T>> Optional<Bounds<T>> read(TableReader table, Keys<T> keys) {
        Optional<T> start = table.need(keys.start());
        Optional<T> low = table.need(keys.low());
        Optional<T> high = table.need(keys.high());
        boolean ordered = ordered(table, keys.low(), low, keys.high(), high);
        if (ordered) {
            boolean aboveLow = ordered(table, keys.low(), low, keys.start(), start);
            boolean belowHigh = ordered(table, keys.start(), start, keys.high(), high);
            ordered = aboveLow && belowHigh;
        }
        if (!ordered || start.isEmpty() || low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Bounds<>(start.get(), low.get(), high.get()));
    }

    /** Reads two needed limits and a start that is counted from elsewhere, so that it need not lie between them. */
    static <T extends Comparable<T>> Optional<Bounds<T>> readLimits(TableReader table, Keys<T> keys, T usualStart) {
        T start = table.find(keys.start()).orElse(usualStart);
        Optional<T> low = table.need(keys.low());
        Optional<T> high = table.need(keys.high());
        if (!ordered(table, keys.low(), low, keys.high(), high)) {
            return Optional.empty();
        }
        return low.flatMap(least -> high.map(most -> new Bounds<>(start, least, most)));
    }

    private static <T extends Comparable<T>> boolean ordered(
            TableReader table, PlanKey<T> lowKey, Optional<T> low, PlanKey<T> highKey, Optional<T> high) {
        if (low.isEmpty() || high.isEmpty() || low.get().compareTo(high.get()) <= 0) {
            return true;
        }
        table.problems().order(Finding.Severity.ERROR, table.spot(lowKey), "not above", table.spot(highKey));
        return false;
    }

    /** The keys of a sweep's largest step and of what can be set. */
    record StepKeys(PlanKey<Double> largest, PlanKey<Double> resolution) {
        /** Empty when the two contradict. */
        Optional<SweepStep> read(TableReader table) {
            double largestStep = table.get(largest);
            double finest = table.get(resolution);
            if (finest > largestStep) {
                table.problems()
                        .order(Finding.Severity.ERROR, table.spot(resolution), "not above", table.spot(largest));
                return Optional.empty();
            }
            return Optional.of(new SweepStep(largestStep, finest));
        }
    }
}
