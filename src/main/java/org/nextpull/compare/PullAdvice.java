package org.nextpull.compare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.math.ChiSquared;
import org.nextpull.scatter.Scatter;

/**
 * Plans for a day of comparing two labels, from a scatter that is itself only known so well.
 *
 * @param interleaved least plan there and back; empty when out of reach
 * @param blocks least plan of one label after the other; empty when out of reach
 * @param cautious pulls there and back that suffice were the scatter at the upper end of its 80 % interval; empty when out of reach
 * @param resolvedByMost difference that {@link PullPlan#MOST_PULLS} pulls there and back would find, in percent: below it every wish
 *     is out of reach
 */
public record PullAdvice(
        Optional<PullPlan> interleaved, Optional<PullPlan> blocks, OptionalInt cautious, double resolvedByMost) {
    private static final double SCATTER_CONFIDENCE = 0.80;
    private static final int HALVINGS = 60;

    /** Plans for two labels. */
    public static PullAdvice of(Scatter scatter, PullPlan.Wish wish, List<String> labels) {
        if (!(scatter.percent() > 0)) {
            throw new IllegalArgumentException("pulls without any scatter need no plan; measure it");
        }
        double upper = ChiSquared.of(scatter.degreesOfFreedom())
                .standardDeviation(scatter.percent(), SCATTER_CONFIDENCE)
                .high();
        Optional<PullPlan> cautious = PullPlan.least(upper, wish, labels, PullOrder.THERE_AND_BACK);
        return new PullAdvice(
                PullPlan.least(scatter.percent(), wish, labels, PullOrder.THERE_AND_BACK),
                PullPlan.least(scatter.percent(), wish, labels, PullOrder.BLOCKS),
                cautious.map(plan -> OptionalInt.of(plan.pulls())).orElse(OptionalInt.empty()),
                resolved(scatter.percent(), wish.power(), labels));
    }

    private static double resolved(double scatterPercent, double power, List<String> labels) {
        List<String> order = PullOrder.THERE_AND_BACK.of(labels, PullPlan.MOST_PULLS);
        double low = 0;
        double high = 10 * scatterPercent;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (PullPlan.of(scatterPercent, new PullPlan.Wish(middle, power), order)
                            .power()
                    >= power) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }
}
