package org.nextpull.compare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.nextpull.math.ChiSquared;
import org.nextpull.scatter.Scatter;

/**
 * Plans for a day of comparing labels, from a scatter that is itself only known so well.
 *
 * @param interleaved least plan there and back; empty when out of reach
 * @param blocks least plans in blocks, for labels that are dear to change, with three change-overs and with two
 * @param cheapest the day in blocks that was asked for by its change-overs or by what they cost
 * @param cautious pulls there and back that suffice were the scatter at the upper end of its 80 % interval; empty when out of reach
 * @param resolvedByMost difference that {@link PullPlan#MOST_PULLS} pulls there and back would find, in percent: below it every wish
 *     is out of reach
 * @param swept whether each label is swept before, so that the verdict knows its scatter the better
 */
public record PullAdvice(
        Optional<PullPlan> interleaved,
        List<Blocks> blocks,
        Optional<Cheapest> cheapest,
        OptionalInt cautious,
        double resolvedByMost,
        boolean swept) {
    private static final double SCATTER_CONFIDENCE = 0.80;

    public PullAdvice {
        blocks = List.copyOf(blocks);
    }

    /**
     * A day in blocks.
     *
     * @param changeOvers of each label with the reference
     * @param plan the one of fewest pulls; empty when out of reach
     */
    public record Blocks(int changeOvers, Optional<PullPlan> plan) {}

    /**
     * What change-overs cost.
     *
     * @param number of change-overs of each label with the reference; empty for as many as cost least
     * @param pulls what each costs beside the pull that flushes, in pulls
     */
    public record ChangeCost(OptionalInt number, double pulls) {}

    /**
     * A day in blocks that costs least.
     *
     * @param cost of its change-overs
     * @param plan empty when out of reach
     */
    public record Cheapest(ChangeCost cost, Optional<PullPlan> plan) {}

    /**
     * Plans for labels.
     *
     * @param scatter pull-to-pull scatter, above 0
     * @param sweepFreedom degrees of freedom with which the sweep of each label will tell that again; empty where none is swept before
     * @param labels two or more, all different, the reference first
     * @param cost of change-overs; empty where only there and back and a few change-overs are asked for
     * @throws IllegalArgumentException when there is no scatter, or the labels are not different ones
     */
    public static PullAdvice of(
            Scatter scatter,
            OptionalDouble sweepFreedom,
            PullPlan.Wish wish,
            List<String> labels,
            Optional<ChangeCost> cost) {
        DoubleFunction<LabelScatters> scatters = percent -> sweepFreedom.isPresent()
                ? LabelScatters.swept(new Scatter(percent, sweepFreedom.getAsDouble()), labels)
                : LabelScatters.of(percent);
        LabelScatters known = scatters.apply(scatter.percent());
        double upper = ChiSquared.of(scatter.degreesOfFreedom())
                .standardDeviation(scatter.percent(), SCATTER_CONFIDENCE)
                .high();
        Optional<PullPlan> cautious = PullPlan.thereAndBack(scatters.apply(upper), wish, labels);
        BlockPlans inBlocks = new BlockPlans(known, wish, labels);
        Optional<PullPlan> interleaved = PullPlan.thereAndBack(known, wish, labels);
        return new PullAdvice(
                interleaved,
                IntStream.of(3, 2)
                        .mapToObj(changes -> new Blocks(changes, interleaved.flatMap(turns -> inBlocks.with(changes))))
                        .toList(),
                cost.map(asked -> new Cheapest(
                        asked,
                        interleaved.isEmpty()
                                ? Optional.empty()
                                : asked.number().isPresent()
                                        ? inBlocks.with(asked.number().getAsInt())
                                        : inBlocks.cheapest(asked.pulls()))),
                cautious.map(plan -> OptionalInt.of(plan.pulls())).orElse(OptionalInt.empty()),
                PullPlan.resolved(known, wish.power(), PullOrder.thereAndBack(labels, PullPlan.MOST_PULLS)),
                sweepFreedom.isPresent());
    }

    /** The plan in blocks with so many change-overs of each label with the reference. */
    public Optional<PullPlan> withChangeOvers(int changeOvers) {
        return blocks.stream()
                .filter(day -> day.changeOvers() == changeOvers)
                .findFirst()
                .flatMap(Blocks::plan);
    }
}
