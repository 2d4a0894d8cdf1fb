package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.finding.Severity;

/** A start and the two limits around it, in the unit of the keys. */
record Bounds(double start, double low, double high) {

    /** The keys of the three. */
    record Keys(String start, String low, String high) {
        List<String> all() {
            return List.of(start, low, high);
        }
    }

    /** Reads the three needed numbers; empty when one is missing or wrong, or when they contradict. */
    static Optional<Bounds> read(TableReader table, Keys keys, Range range) {
        OptionalDouble start = table.neededNumber(keys.start(), range);
        OptionalDouble low = table.neededNumber(keys.low(), range);
        OptionalDouble high = table.neededNumber(keys.high(), range);
        boolean ordered = ordered(table, keys.low(), low, keys.high(), high);
        if (ordered) {
            boolean aboveLow = ordered(table, keys.low(), low, keys.start(), start);
            boolean belowHigh = ordered(table, keys.start(), start, keys.high(), high);
            ordered = aboveLow && belowHigh;
        }
        if (!ordered || start.isEmpty() || low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Bounds(start.getAsDouble(), low.getAsDouble(), high.getAsDouble()));
    }

    private static boolean ordered(
            TableReader table, String lowKey, OptionalDouble low, String highKey, OptionalDouble high) {
        if (low.isEmpty() || high.isEmpty() || low.getAsDouble() <= high.getAsDouble()) {
            return true;
        }
        table.problems().order(Severity.ERROR, table.spot(lowKey), "not above", table.spot(highKey));
        return false;
    }
}
