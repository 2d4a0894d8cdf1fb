package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.math.Series;
import org.nextpull.math.regression.Covariance;

/** Error that each of several comparisons of one day may make, so that all together make a given one. */
final class PairErrors {
    private final int comparisons;
    private final Optional<SimultaneousLevel> level;

    private PairErrors(DayFit day, List<Series> contrasts, long seed) {
        Covariance covariance = day.fit().covariance(contrasts);
        boolean scattered = true;
        double inverse = 0;
        for (int index = 0; index < contrasts.size(); index++) {
            scattered &= covariance.standardError(index) > 0;
            inverse += 1 / day.fit().estimate(contrasts.get(index)).degreesOfFreedom() / contrasts.size();
        }
        this.comparisons = contrasts.size();
        this.level = scattered ? Optional.of(SimultaneousLevel.of(covariance, 1 / inverse, seed)) : Optional.empty();
    }

    /** All labels against the reference. */
    static PairErrors againstReference(DayFit day, long seed) {
        String reference = day.labels().get(0);
        List<Series> contrasts = day.labels().stream()
                .skip(1)
                .map(label -> day.contrast(label, reference))
                .toList();
        return new PairErrors(day, contrasts, seed);
    }

    /** Every label against every other. */
    static PairErrors allPairs(DayFit day, long seed) {
        List<Series> contrasts = new ArrayList<>();
        for (int one = 0; one < day.labels().size(); one++) {
            for (int other = one + 1; other < day.labels().size(); other++) {
                contrasts.add(day.contrast(day.labels().get(other), day.labels().get(one)));
            }
        }
        return new PairErrors(day, contrasts, seed);
    }

    /** Error of each; without any scatter there is no correlation to draw from, and the error is shared out evenly. */
    double each(double error) {
        return level.map(drawn -> drawn.each(error)).orElse(error / comparisons);
    }
}
