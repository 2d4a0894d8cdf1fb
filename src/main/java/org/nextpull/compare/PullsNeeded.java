package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import org.nextpull.math.Series;

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
     * @param halfWidthPercent wanted, in percent of the reference, above 0
     * @param error of the comparison, two-sided, above 0, below 1
     */
    static OptionalInt further(
            DayFit day, List<ComparedPull> pulls, String label, double halfWidthPercent, double error) {
        IntPredicate suffices = new Further(day, pulls, label, halfWidthPercent, error);
        if (!suffices.test(MOST)) {
            return OptionalInt.empty();
        }
        int tooFew = 0;
        int enough = MOST;
        while (enough - tooFew > 2) {
            int middle = tooFew + (enough - tooFew) / 4 * 2;
            if (suffices.test(middle)) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return OptionalInt.of(enough);
    }

    /** Whether so many further pulls are enough; more never narrow the interval less, but for the end of a turn. */
    private record Further(DayFit day, List<ComparedPull> pulls, String label, double halfWidthPercent, double error)
            implements IntPredicate {
        @Override
        public boolean test(int extra) {
            String reference = day.labels().get(0);
            List<String> ran =
                    new ArrayList<>(pulls.stream().map(ComparedPull::label).toList());
            ran.addAll(PullOrder.thereAndBack(List.of(reference, label), extra));
            double last = day.orders().max();
            Series orders = day.orders().append(Series.generate(extra, pull -> last + 1 + pull));
            double scatter = Math.sqrt(day.fit().pooled().variance()) * day.toPercent();
            List<String> labels = new ArrayList<>(List.of(reference, label));
            day.labels().stream().filter(other -> !labels.contains(other)).forEach(labels::add);
            return PullOrder.suffice(ran, label, reference)
                    && new DayModel(labels, day.model().known())
                                    .expected(ran, orders, LabelScatters.of(scatter))
                                    .get(0)
                                    .halfWidth(1 - error)
                            <= halfWidthPercent;
        }
    }
}
