package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.math.Series;
import org.nextpull.math.regression.Design;

/**
 * What the model of a day holds besides its labels.
 *
 * @param drift a straight change with the order of the pulls
 * @param warmUp a first-pulls term that dies out within about three pulls
 */
record DayTerms(boolean drift, boolean warmUp) {
    /** Pulls after which the warm-up has fallen to 37 %. */
    private static final double WARM_UP_PULLS = 3;

    /** Columns: labels after the reference, then the terms, centred so that the constant is a label's level in mid-day. */
    Design design(List<String> labels, List<ComparedPull> pulls) {
        return design(
                labels,
                pulls.stream().map(ComparedPull::label).toList(),
                Series.of(pulls.stream().mapToDouble(ComparedPull::order)));
    }

    Design design(List<String> labels, List<String> labelOfPull, Series orders) {
        List<Series> columns = new ArrayList<>();
        for (String label : labels.subList(1, labels.size())) {
            columns.add(Series.of(labelOfPull.stream().mapToDouble(own -> own.equals(label) ? 1 : 0)));
        }
        if (drift) {
            columns.add(centred(orders));
        }
        if (warmUp) {
            columns.add(centred(orders.map(order -> Math.exp(-order / WARM_UP_PULLS))));
        }
        return new Design(columns, true);
    }

    private static Series centred(Series column) {
        double mean = column.mean();
        return column.map(value -> value - mean);
    }
}
