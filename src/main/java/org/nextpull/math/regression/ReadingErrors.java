package org.nextpull.math.regression;

import java.util.List;
import java.util.Optional;
import org.nextpull.math.Series;

/**
 * What is known of the errors of readings beside their size: what they share, which of them scatter alike, and how much each counts.
 *
 * @param shared covariance of what readings have in common, such as a slow drift whose size is a prior, in the square of their unit
 * @param groups group of each reading, from 0, none empty; readings of one group scatter alike
 * @param weights of the readings, above 0, at most 1, as {@link OutlierWeights} gives them
 * @param usual variance of a reading of any group as it usually is, with the degrees of freedom that this is worth; empty for none
 * @param allowance how many times the variance of what is shared the error of an estimate allows for, at least 1: coefficients are
 *     weighed for a likely size, and an estimate still holds where it is larger
 */
public record ReadingErrors(
        Covariance shared, List<Integer> groups, Series weights, Optional<VariancePart> usual, double allowance) {
    public ReadingErrors {
        groups = List.copyOf(groups);
        if (shared.size() != groups.size() || weights.size() != groups.size()) {
            throw new IllegalArgumentException("covariance, groups and weights differ in number");
        }
        if (!(weights.min() > 0) || !(allowance >= 1)) {
            throw new IllegalArgumentException("a weight is not above 0, or the allowance is below 1");
        }
    }

    /** The same readings with other weights, above 0, at most 1. */
    public ReadingErrors withWeights(Series newWeights) {
        return new ReadingErrors(shared, groups, newWeights, usual, allowance);
    }

    /** The same, with one scatter for all. */
    ReadingErrors inOneGroup() {
        return new ReadingErrors(shared, groups.stream().map(group -> 0).toList(), weights, usual, allowance);
    }

    int groupCount() {
        return 1 + groups.stream().mapToInt(Integer::intValue).max().orElse(0);
    }
}
