package org.nextpull.compare;

import java.util.List;
import java.util.Optional;
import org.nextpull.math.Estimate;
import org.nextpull.math.NoncentralT;
import org.nextpull.math.Series;
import org.nextpull.math.StudentT;

/**
 * How many pulls, in which order, will tell two labels apart: worked out before the day from the scatter, by the arithmetic of the
 * comparison itself.
 *
 * @param order labels pull by pull
 * @param halfWidthPercent half width that the 95 % interval will have, on average, in percent of the first label
 * @param power probability that a true difference of the wanted size is then found, if this number of pulls was fixed beforehand
 * @param powerUnplanned the same if nothing was fixed, so that further pulls could have followed
 */
public record PullPlan(List<String> order, double halfWidthPercent, double power, double powerUnplanned) {
    /** Beyond this many pulls a wish is out of reach of a day. */
    public static final int MOST_PULLS = 120;

    private static final int HALVINGS = 60;

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
        /**
         * Checks what is given.
         *
         * @throws IllegalArgumentException outside these ranges
         */
        public Wish {
            if (!(differencePercent > 0) || !(power > InterimLooks.ERROR && power < 1)) {
                throw new IllegalArgumentException("no plan for " + differencePercent + " % at " + power);
            }
        }
    }

    /** How many pulls of both labels together. */
    public int pulls() {
        return order.size();
    }

    /**
     * The least plan that fulfils the wish, in whole fours of pulls; empty when {@link #MOST_PULLS} do not.
     *
     * @param scatterPercent pull-to-pull standard deviation, above 0
     * @param labels two different labels
     * @throws IllegalArgumentException when the scatter is not above 0, or the labels are not two different ones
     */
    public static Optional<PullPlan> least(double scatterPercent, Wish wish, List<String> labels, PullOrder order) {
        if (labels.size() != 2 || labels.get(0).equals(labels.get(1)) || !(scatterPercent > 0)) {
            throw new IllegalArgumentException("a plan needs two different labels and a scatter above 0");
        }
        for (int pulls = 4; pulls <= MOST_PULLS; pulls += 4) {
            PullPlan plan = of(scatterPercent, wish, order.of(labels, pulls));
            if (plan.power >= wish.power) {
                return Optional.of(plan);
            }
        }
        return Optional.empty();
    }

    /**
     * What a given order of two labels will tell.
     *
     * @param scatterPercent pull-to-pull standard deviation, above 0
     * @param order at least two pulls of each label
     */
    public static PullPlan of(double scatterPercent, Wish wish, List<String> order) {
        Estimate expected = expected(scatterPercent, order);
        return new PullPlan(
                order,
                expected.halfWidth(1 - InterimLooks.ERROR),
                power(expected, wish.differencePercent, new InterimLooks.Planned(order.size()), order),
                power(expected, wish.differencePercent, new InterimLooks.Open(0), order));
    }

    /**
     * The difference, in percent, that a given order of two labels finds with the wanted power.
     *
     * @param scatterPercent pull-to-pull standard deviation, above 0
     * @param power above 0.05 and below 1
     */
    static double resolved(double scatterPercent, double power, List<String> order) {
        Estimate expected = expected(scatterPercent, order);
        InterimLooks planned = new InterimLooks.Planned(order.size());
        double low = 0;
        double high = 100 * expected.standardError();
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (power(expected, middle, planned, order) >= power) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static Estimate expected(double scatterPercent, List<String> order) {
        List<String> labels = order.stream().distinct().toList();
        return DayModel.expected(labels, order, Series.generate(order.size(), place -> place), scatterPercent);
    }

    private static double power(Estimate expected, double difference, InterimLooks looks, List<String> order) {
        if (!ChangeOvers.suffice(order, order.get(0), other(order))) {
            return 0;
        }
        double freedom = expected.degreesOfFreedom();
        double critical = StudentT.of(freedom).twoSided(1 - looks.claimError(order.size()));
        NoncentralT truth = NoncentralT.of(freedom, difference / expected.standardError());
        return truth.above(critical) + (1 - truth.above(-critical));
    }

    private static String other(List<String> order) {
        return order.stream()
                .filter(label -> !label.equals(order.get(0)))
                .findFirst()
                .orElseThrow();
    }
}
