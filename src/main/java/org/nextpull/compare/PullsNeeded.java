package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.nextpull.math.Series;
import org.nextpull.math.StudentT;
import org.nextpull.math.regression.LeastSquares;

/** How many further pulls, there and back between two labels, narrow their difference to a wanted half width. */
final class PullsNeeded {
    /** Beyond this it is no day's work and out of reach. */
    static final int MOST = 120;

    private PullsNeeded() {}

    /**
     * Further pulls, an even number.
     *
     * @param pulls that were run
     * @param label compared with the first of the fit's labels
     * @param halfWidthPercent wanted, above 0
     * @param error of the comparison, two-sided
     */
    static OptionalInt further(
            DayFit day, List<ComparedPull> pulls, String label, double halfWidthPercent, double error) {
        String reference = day.labels().get(0);
        double sd = Math.sqrt(day.fit().pooled().variance()) * day.toPercent();
        Series contrast = day.contrast(label, reference);
        List<String> labels =
                new ArrayList<>(pulls.stream().map(ComparedPull::label).toList());
        List<Double> orders =
                new ArrayList<>(pulls.stream().map(ComparedPull::order).toList());
        double last = orders.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        List<String> order = PullOrder.THERE_AND_BACK.of(List.of(reference, label), MOST);
        for (int extra = 1; extra <= MOST; extra++) {
            labels.add(order.get(extra - 1));
            orders.add(last + extra);
            if (extra % 2 == 0) {
                double unit = unitError(day, labels, Series.of(orders), contrast);
                double freedom = labels.size() - day.coefficients();
                if (StudentT.of(freedom).twoSided(1 - error) * sd * unit <= halfWidthPercent) {
                    return OptionalInt.of(extra);
                }
            }
        }
        return OptionalInt.empty();
    }

    private static double unitError(DayFit day, List<String> labels, Series orders, Series contrast) {
        return LeastSquares.fit(day.terms().design(day.labels(), labels, orders), Series.constant(orders.size(), 0))
                .found()
                .map(fit -> Math.sqrt(fit.unscaled().variance(contrast)))
                .orElse(Double.POSITIVE_INFINITY);
    }
}
