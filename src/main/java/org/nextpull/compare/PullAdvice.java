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
 * @param threeChangeOvers least plan in blocks with three change-overs; empty when out of reach
 * @param twoChangeOvers least plan in blocks with two change-overs; empty when out of reach
 * @param cautious pulls there and back that suffice were the scatter at the upper end of its 80 % interval; empty when out of reach
 * @param resolvedByMost difference that {@link PullPlan#MOST_PULLS} pulls there and back would find, in percent: below it every wish
 *     is out of reach
 */
public record PullAdvice(
        Optional<PullPlan> interleaved,
        Optional<PullPlan> threeChangeOvers,
        Optional<PullPlan> twoChangeOvers,
        OptionalInt cautious,
        double resolvedByMost) {
    private static final double SCATTER_CONFIDENCE = 0.80;

    /**
     * Plans for two labels.
     *
     * @param scatter pull-to-pull scatter, above 0
     * @param labels two different labels, the reference first
     * @throws IllegalArgumentException when there is no scatter, or not two labels
     */
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
                PullPlan.least(scatter.percent(), wish, labels, PullOrder.THREE_CHANGE_OVERS),
                PullPlan.least(scatter.percent(), wish, labels, PullOrder.TWO_CHANGE_OVERS),
                cautious.map(plan -> OptionalInt.of(plan.pulls())).orElse(OptionalInt.empty()),
                PullPlan.resolved(
                        scatter.percent(), wish.power(), PullOrder.THERE_AND_BACK.of(labels, PullPlan.MOST_PULLS)));
    }
}
