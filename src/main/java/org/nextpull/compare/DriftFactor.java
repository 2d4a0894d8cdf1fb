package org.nextpull.compare;

import java.util.List;
import org.nextpull.math.Series;
import org.nextpull.math.regression.LeastSquares;

/** How many times the variance of a difference grows because drift and warm-up are told apart from it. */
final class DriftFactor {
    private DriftFactor() {}

    /** 1 when labels were pulled there and back, about 4 in two blocks one after the other. */
    static double of(DayFit day, List<ComparedPull> pulls, String label) {
        DayTerms none = new DayTerms(false, false);
        Series contrast = day.contrast(label, day.labels().get(0));
        return variance(day.terms(), day, pulls, contrast)
                / variance(none, day, pulls, contrast.slice(0, day.labels().size()));
    }

    private static double variance(DayTerms terms, DayFit day, List<ComparedPull> pulls, Series contrast) {
        return LeastSquares.fit(terms.design(day.labels(), pulls), Series.constant(pulls.size(), 0))
                .orElseThrow()
                .unscaled()
                .variance(contrast);
    }
}
