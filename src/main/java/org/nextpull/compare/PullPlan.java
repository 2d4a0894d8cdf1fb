package org.nextpull.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.nextpull.math.Estimate;
import org.nextpull.math.NoncentralT;
import org.nextpull.math.Series;
import org.nextpull.math.StudentT;

/**
 * How many pulls, in which order, will tell labels from the first of them: worked out before the day from the scatter, by the arithmetic
 * of the comparison itself.
 *
 * @param order labels pull by pull, without pulls that flush
 * @param flushing pulls beside them, one after each change-over, that flush the line and count for nothing
 * @param halfWidthPercent half width that the widest 95 % interval will have, on average, in percent of the first label; for all
 *     labels together
 * @param power probability that a true difference of the wanted size is then found, for the label that is known least, if this number
 *     of pulls was fixed beforehand
 * @param powerUnplanned the same if nothing was fixed, so that further pulls could have followed
 */
public record PullPlan(List<String> order, int flushing, double halfWidthPercent, double power, double powerUnplanned) {
    /** Beyond this many pulls a wish is out of reach of a day. */
    public static final int MOST_PULLS = 120;

    private static final int HALVINGS = 60;
    private static final double LARGER = 1.5;

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

    /** How many pulls of all labels together, without those that flush. */
    public int pulls() {
        return order.size();
    }

    /** How often the label is changed. */
    public int changeOvers() {
        return PullOrder.changeOvers(order);
    }

    /**
     * All that the day costs, in pulls.
     *
     * @param changeOverPulls what a change-over costs beside the pull that flushes, in pulls
     */
    public double cost(double changeOverPulls) {
        return pulls() + flushing + changeOvers() * changeOverPulls;
    }

    /**
     * The least plan there and back that fulfils the wish, in whole turns; empty when {@link #MOST_PULLS} do not.
     *
     * @param scatters what is known of them before
     * @param labels two or more, all different, the reference first
     * @throws IllegalArgumentException when the labels are not different ones
     */
    static Optional<PullPlan> thereAndBack(LabelScatters scatters, Wish wish, List<String> labels) {
        if (labels.size() < 2 || Set.copyOf(labels).size() < labels.size()) {
            throw new IllegalArgumentException("a plan needs different labels");
        }
        int turn = 2 * labels.size();
        for (int pulls = turn; pulls <= MOST_PULLS; pulls += turn) {
            PullPlan plan = of(scatters, wish, PullOrder.thereAndBack(labels, pulls));
            if (plan.power >= wish.power) {
                return Optional.of(plan);
            }
        }
        return Optional.empty();
    }

    /**
     * What a given order of labels will tell.
     *
     * @param scatters what is known of them before
     * @param order at least two pulls of each label, the reference first
     */
    public static PullPlan of(LabelScatters scatters, Wish wish, List<String> order) {
        return of(scatters, wish, order, false);
    }

    /**
     * The order of decision runs in blocks: the least that fulfils the wish, or where that is out of reach, one for a difference that is
     * not.
     *
     * @param scatters what is known of them before
     * @param labels two or more, all different, the reference first
     * @param changeOversEach change-overs of each label with the reference, at least 2
     */
    public static PullPlan decision(LabelScatters scatters, Wish wish, List<String> labels, int changeOversEach) {
        Optional<PullPlan> plan = new BlockPlans(scatters, wish, labels).with(changeOversEach);
        return plan.orElseGet(() ->
                decision(scatters, new Wish(LARGER * wish.differencePercent, wish.power), labels, changeOversEach));
    }

    /** The same where each change-over has a pull that flushes. */
    static PullPlan inBlocks(LabelScatters scatters, Wish wish, List<String> order) {
        return of(scatters, wish, order, true);
    }

    private static PullPlan of(LabelScatters scatters, Wish wish, List<String> order, boolean flushed) {
        Estimate widest = widest(scatters, order, flushed);
        return new PullPlan(
                order,
                flushed ? PullOrder.changeOvers(order) : 0,
                widest.halfWidth(1 - each(InterimLooks.ERROR, order)),
                power(widest, wish.differencePercent, new InterimLooks.Planned(order.size()), order),
                power(widest, wish.differencePercent, new InterimLooks.Open(0), order));
    }

    /**
     * The difference, in percent, that a given order of labels finds with the wanted power.
     *
     * @param scatters what is known of them before
     * @param power above 0.05 and below 1
     */
    static double resolved(LabelScatters scatters, double power, List<String> order) {
        Estimate widest = widest(scatters, order, false);
        InterimLooks planned = new InterimLooks.Planned(order.size());
        double low = 0;
        double high = 100 * widest.standardError();
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (power(widest, middle, planned, order) >= power) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** The difference from the reference that will be known least; a pull that flushes takes its place in the day. */
    static Estimate widest(LabelScatters scatters, List<String> order, boolean flushed) {
        Series places = Series.generate(
                order.size(), pull -> pull + (flushed ? PullOrder.changeOvers(order.subList(0, pull + 1)) : 0));
        return new DayModel(order.stream().distinct().toList(), scatters.told())
                .expected(order, places, scatters).stream()
                        .max(Comparator.comparingDouble(Estimate::standardError))
                        .orElseThrow();
    }

    /** Error of each label for all of them together, as if they were independent (Sidak, JASA 62, 1967): a little too careful. */
    private static double each(double error, List<String> order) {
        return 1 - Math.pow(1 - error, 1.0 / (order.stream().distinct().count() - 1));
    }

    private static double power(Estimate expected, double difference, InterimLooks looks, List<String> order) {
        List<String> labels = order.stream().distinct().toList();
        if (!labels.stream().skip(1).allMatch(label -> PullOrder.suffice(order, label, labels.get(0)))) {
            return 0;
        }
        double freedom = expected.degreesOfFreedom();
        double critical = StudentT.of(freedom).twoSided(1 - each(looks.claimError(order.size()), order));
        NoncentralT truth = NoncentralT.of(freedom, difference / expected.standardError());
        return truth.above(critical) + (1 - truth.above(-critical));
    }
}
