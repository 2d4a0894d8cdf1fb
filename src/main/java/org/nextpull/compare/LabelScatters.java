package org.nextpull.compare;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.scatter.Scatter;

/**
 * The scatter from pull to pull as far as it is known before labels are compared.
 *
 * @param percent one standard deviation of a pull of any label, above 0
 * @param told of each label, as a sweep of its own told it; empty where none was swept. It then counts in the comparison too
 */
public record LabelScatters(double percent, Map<String, Scatter> told) {
    /**
     * Checks what is given.
     *
     * @throws IllegalArgumentException when a scatter is not above 0
     */
    public LabelScatters {
        told = Map.copyOf(told);
        if (!(percent > 0) || told.values().stream().anyMatch(scatter -> !(scatter.percent() > 0))) {
            throw new IllegalArgumentException("a plan needs a scatter above 0");
        }
    }

    /** One for all labels, of which none was swept. */
    public static LabelScatters of(double percent) {
        return new LabelScatters(percent, Map.of());
    }

    /** One for all labels, each of which is swept before and tells it again. */
    public static LabelScatters swept(Scatter each, Collection<String> labels) {
        return new LabelScatters(
                each.percent(), labels.stream().collect(Collectors.toMap(label -> label, label -> each)));
    }

    /** Variance of a pull of a label, in square percent. */
    double variance(String label) {
        double own = Optional.ofNullable(told.get(label)).map(Scatter::percent).orElse(percent);
        return own * own;
    }
}
