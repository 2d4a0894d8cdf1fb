package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.math.Series;
import org.nextpull.math.regression.Covariance;

/** Error that each of several comparisons of one day may make, so that all together make a given one. */
final class PairErrors {
    private final DayFit day;
    private final long seed;

    PairErrors(DayFit day, long seed) {
        this.day = day;
        this.seed = seed;
    }

    /** All labels against the reference. */
    double againstReference(double error) {
        String reference = day.labels().get(0);
        return each(
                day.labels().stream()
                        .skip(1)
                        .map(label -> day.contrast(label, reference))
                        .toList(),
                error);
    }

    /** Every label against every other. */
    double allPairs(double error) {
        List<Series> contrasts = new ArrayList<>();
        for (int one = 0; one < day.labels().size(); one++) {
            for (int other = one + 1; other < day.labels().size(); other++) {
                contrasts.add(day.contrast(day.labels().get(other), day.labels().get(one)));
            }
        }
        return each(contrasts, error);
    }

    private double each(List<Series> contrasts, double error) {
        Covariance covariance = day.fit().covariance(contrasts);
        boolean scattered = true;
        double inverse = 0;
        for (int index = 0; index < contrasts.size(); index++) {
            scattered &= covariance.standardError(index) > 0;
            inverse += 1 / day.fit().estimate(contrasts.get(index)).degreesOfFreedom() / contrasts.size();
        }
        // without any scatter there is no correlation to draw from: Bonferroni
        return scattered ? SimultaneousLevel.each(covariance, 1 / inverse, error, seed) : error / contrasts.size();
    }
}
