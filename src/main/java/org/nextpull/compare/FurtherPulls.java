package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How to go on where it cannot be told yet.
 *
 * @param order labels of the further pulls, one by one
 * @param looks how the comparison must then be taken for its looks together to keep their error
 */
public record FurtherPulls(List<String> order, InterimLooks looks) {
    public FurtherPulls {
        order = List.copyOf(order);
    }

    /** The further pulls of a result with so many pulls done; empty when all is settled or what is not is out of reach. */
    static Optional<FurtherPulls> of(ComparisonResult result, InterimLooks looks, int done) {
        List<String> labels = new ArrayList<>(List.of(result.reference().label()));
        int needed = 0;
        for (Comparison one : result.comparisons()) {
            if (one.pullsNeeded().isPresent()) {
                labels.add(one.label());
                needed = Math.max(needed, one.pullsNeeded().getAsInt());
            }
        }
        if (labels.size() == 1) {
            return Optional.empty();
        }
        int count = looks.isFinal(done) ? count(needed, labels.size()) : needed;
        return Optional.of(new FurtherPulls(PullOrder.thereAndBack(labels, count), looks.next(done, count)));
    }

    /** What is needed between two labels, for each of several: whole turns there and back. */
    private static int count(int needed, int labels) {
        return labels == 2 ? needed : 2 * labels * (int) Math.ceil(needed / 4.0);
    }
}
