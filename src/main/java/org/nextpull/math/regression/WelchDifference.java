package org.nextpull.math.regression;

import java.util.List;
import org.nextpull.math.Estimate;
import org.nextpull.math.Series;

/** Difference of two means whose samples scatter differently (Welch, Biometrika 34, 1947). */
public final class WelchDifference {
    private WelchDifference() {}

    /**
     * Mean of the first less mean of the second.
     *
     * @throws IllegalStateException when a sample has fewer than two numbers
     */
    public static Estimate of(Series first, Series second) {
        VariancePart one = new VariancePart(first.variance() / first.size(), first.size() - 1);
        VariancePart other = new VariancePart(second.variance() / second.size(), second.size() - 1);
        return new Estimate(
                first.mean() - second.mean(),
                Math.sqrt(one.variance() + other.variance()),
                VariancePart.satterthwaite(List.of(one, other)));
    }
}
