package org.nextpull.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Orders in blocks, for labels that are dear to change: which blocks, and how many pulls in each. The blocks grow where a further pull
 * narrows the widest interval most, two at once from both ends of the day, until the wish is fulfilled.
 *
 * @param scatters what is known of them before
 * @param labels all different, the reference first
 */
record BlockPlans(LabelScatters scatters, PullPlan.Wish wish, List<String> labels) {
    BlockPlans {
        labels = List.copyOf(labels);
    }

    /** Beyond this many change-overs for each label a day goes there and back. */
    private static final int MOST_CHANGE_OVERS_EACH = 3;
    /** With no more runs of each than these a difference is claimed in 7 % of simulated days where there is none, whatever sweeps told. */
    private static final int RUNS_THAT_TELL = 2;

    /** A block grows by one in so many of all pulls, at least by one. */
    private static final int GROWTH = 12;

    /** The plan of fewest pulls that changes each label with the reference so often, and no more than that takes; empty when out of reach. */
    Optional<PullPlan> with(int changeOversEach) {
        int total = changeOversEach;
        while (PullOrder.blocks(labels, total, changeOversEach).isEmpty()) {
            total++;
        }
        return with(total, changeOversEach);
    }

    /**
     * The plan that costs least, whatever its change-overs.
     *
     * @param changeOverPulls what a change-over costs beside the pull that flushes, in pulls, at least 0
     */
    Optional<PullPlan> cheapest(double changeOverPulls) {
        Optional<PullPlan> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int total = PullOrder.LEAST_CHANGE_OVERS;
                total <= most() && total * (1 + changeOverPulls) < least;
                total++) {
            Optional<PullPlan> next = with(total, PullOrder.LEAST_CHANGE_OVERS);
            if (next.isPresent() && next.get().cost(changeOverPulls) < least) {
                best = next;
                least = next.get().cost(changeOverPulls);
            }
        }
        return best;
    }

    private int most() {
        return MOST_CHANGE_OVERS_EACH * labels.size();
    }

    private Optional<PullPlan> with(int total, int each) {
        return PullOrder.blocks(labels, total, each).stream()
                .map(this::grown)
                .flatMap(Optional::stream)
                .min(Comparator.comparingInt(PullPlan::pulls));
    }

    private Optional<PullPlan> grown(List<String> blocks) {
        List<Integer> runs = new ArrayList<>();
        blocks.forEach(label -> runs.add(Collections.frequency(blocks, label) > 1 ? 1 : 2));
        while (true) {
            List<String> order = PullOrder.pulls(blocks, runs);
            if (order.size() > PullPlan.MOST_PULLS) {
                return Optional.empty();
            }
            PullPlan plan = PullPlan.inBlocks(scatters, wish, order);
            if (plan.power() >= wish.power() && order.size() > RUNS_THAT_TELL * labels.size()) {
                return Optional.of(plan);
            }
            int step = Math.max(1, order.size() / GROWTH);
            List<Integer> next = IntStream.range(0, (runs.size() + 1) / 2)
                    .mapToObj(block -> grown(runs, block, step))
                    .min(Comparator.comparingDouble(
                            longer -> PullPlan.widest(scatters, PullOrder.pulls(blocks, longer), true)
                                    .standardError()))
                    .orElseThrow();
            runs.clear();
            runs.addAll(next);
        }
    }

    /** A block and the one as far from the day's other end, so that a straight drift stays balanced and a bow is not read off one block. */
    private static List<Integer> grown(List<Integer> runs, int block, int step) {
        List<Integer> grown = new ArrayList<>(runs);
        int mirror = runs.size() - 1 - block;
        grown.set(block, runs.get(block) + step);
        grown.set(mirror, runs.get(mirror) + step);
        return grown;
    }
}
