package org.nextpull.compare;

import java.util.List;
import java.util.Optional;
import org.nextpull.math.NoncentralT;
import org.nextpull.math.Series;
import org.nextpull.math.StudentT;
import org.nextpull.math.regression.Design;
import org.nextpull.math.regression.LeastSquares;

/**
 * How many pulls, in which order, will tell two labels apart: worked out before the day from the scatter. Drift is fitted in every
 * case, so its size costs nothing and its presence costs what the order makes it cost.
 *
 * @param order labels pull by pull
 * @param halfWidthPercent half width that the 95 % interval will have, on average
 * @param power probability that a true difference of the wanted size is then found
 */
public record PullPlan(List<String> order, double halfWidthPercent, double power) {
    /** Beyond this many pulls a wish is out of reach of a day. */
    public static final int MOST_PULLS = 120;

    private static final double ERROR = 0.05;
    private static final int COEFFICIENTS = 3;

    public PullPlan {
        order = List.copyOf(order);
    }

    /**
     * What is wished.
     *
     * @param differencePercent true difference that must be found, above 0
     * @param power probability of finding it, above 0.05 and below 1; common choices are 0.8 and 0.9
     */
    public record Wish(double differencePercent, double power) {
        public Wish {
            if (!(differencePercent > 0) || !(power > ERROR && power < 1)) {
                throw new IllegalArgumentException("no plan for " + differencePercent + " % at " + power);
            }
        }
    }

    public int pulls() {
        return order.size();
    }

    /**
     * The least plan that fulfils the wish, in whole blocks there and back; empty when {@link #MOST_PULLS} do not.
     *
     * @param scatterPercent pull-to-pull standard deviation, above 0
     * @param labels two different labels
     */
    public static Optional<PullPlan> least(double scatterPercent, Wish wish, List<String> labels, PullOrder order) {
        if (labels.size() != 2 || labels.get(0).equals(labels.get(1)) || !(scatterPercent > 0)) {
            throw new IllegalArgumentException("a plan needs two different labels and a scatter above 0");
        }
        int step = order == PullOrder.BLOCKS ? 2 : 4;
        for (int pulls = 4; pulls <= MOST_PULLS; pulls += step) {
            PullPlan plan = of(scatterPercent, wish, order.of(labels, pulls));
            if (plan.power >= wish.power) {
                return Optional.of(plan);
            }
        }
        return Optional.empty();
    }

    /** What a given order of two labels, at least two pulls of each, will tell. */
    public static PullPlan of(double scatterPercent, Wish wish, List<String> order) {
        Series isSecond = Series.of(order.stream().mapToDouble(label -> label.equals(order.get(0)) ? 0 : 1));
        Series place = Series.generate(order.size(), index -> index);
        double error = LeastSquares.fit(Design.withIntercept(isSecond, place), Series.constant(order.size(), 0))
                        .orElseThrow()
                        .unscaled()
                        .standardError(1)
                * scatterPercent;
        double freedom = order.size() - COEFFICIENTS;
        double critical = StudentT.of(freedom).twoSided(1 - ERROR);
        NoncentralT truth = NoncentralT.of(freedom, wish.differencePercent / error);
        double power = truth.above(critical) + (1 - truth.above(-critical));
        return new PullPlan(order, critical * error, power);
    }
}
