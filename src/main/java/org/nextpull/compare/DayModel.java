package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.math.Estimate;
import org.nextpull.math.Series;
import org.nextpull.math.regression.Design;
import org.nextpull.math.regression.GroupedFit;
import org.nextpull.math.regression.LeastSquares;
import org.nextpull.math.regression.OutlierWeights;

/**
 * Fits the levels of the labels together with the slow change of the day. Drift is always in the model where the pulls are enough:
 * leaving it out when it does not show is how blocks run one after the other claim differences that are drift. Its price is in the
 * interval. The warm-up term is in the model only where the first pulls show it at one in a hundred: always there, it would cost more
 * than it saves.
 */
final class DayModel {
    /**
     * Degrees of freedom with which labels are taken to scatter alike when degrees of freedom are counted. Simulated with four pulls
     * each, plain Satterthwaite (0) makes 4.1 % false claims where 5 are allowed and finds less; this makes 4.8 %, and 5.5 % where one
     * label scatters twice as much as the other.
     */
    private static final double LIKENESS = 1.5;

    private static final double WARM_UP_SHOWS = 0.01;
    private static final double LAST_FIRST_ORDER = 1.5;
    private static final int FREEDOM_BESIDE_WARM_UP = 3;

    private DayModel() {}

    /**
     * The fit; empty when the pulls cannot carry even the levels alone.
     *
     * @param labels the reference first; each label has at least two pulls
     */
    static Optional<DayFit> fit(List<String> labels, List<ComparedPull> pulls) {
        int levels = labels.size();
        boolean drift = pulls.size() >= levels + 2;
        if (pulls.size() >= levels + 2 + FREEDOM_BESIDE_WARM_UP && warmUpShows(labels, pulls)) {
            Optional<DayFit> fit = fit(labels, pulls, new DayTerms(drift, true));
            if (fit.isPresent()) {
                return fit;
            }
        }
        Optional<DayFit> fit = fit(labels, pulls, new DayTerms(drift, false));
        return fit.isPresent() || !drift ? fit : fit(labels, pulls, new DayTerms(false, false));
    }

    static Optional<DayFit> fit(List<String> labels, List<ComparedPull> pulls, DayTerms terms) {
        Design design = terms.design(labels, pulls);
        Series values = values(pulls);
        List<Integer> groups = new ArrayList<>();
        for (ComparedPull pull : pulls) {
            groups.add(labels.indexOf(pull.label()));
        }
        return OutlierWeights.of(design, values)
                .found()
                .flatMap(weights -> GroupedFit.fit(design, values, groups, weights, LIKENESS)
                        .found())
                .map(fit -> new DayFit(labels, terms, fit));
    }

    private static boolean warmUpShows(List<String> labels, List<ComparedPull> pulls) {
        double first = pulls.stream().mapToDouble(ComparedPull::order).min().orElse(0);
        if (first > LAST_FIRST_ORDER) {
            return false;
        }
        Design design = new DayTerms(true, true).design(labels, pulls);
        return LeastSquares.fit(design, values(pulls))
                .found()
                .filter(fit -> {
                    Estimate warmUp = fit.estimate(fit.coefficients().size() - 1);
                    return 2 * Math.min(warmUp.pAbove(0), warmUp.pBelow(0)) < WARM_UP_SHOWS;
                })
                .isPresent();
    }

    private static Series values(List<ComparedPull> pulls) {
        return Series.of(pulls.stream().mapToDouble(ComparedPull::value));
    }
}
