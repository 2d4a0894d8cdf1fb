package org.nextpull.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** In which order labels are pulled, the reference first. */
final class PullOrder {
    private PullOrder() {}

    /**
     * There and back: A B B A, A B C C B A. A straight drift cancels within each block.
     *
     * @param labels two or more
     * @param pulls of all labels together, at least 0
     */
    static List<String> thereAndBack(List<String> labels, int pulls) {
        int period = 2 * labels.size();
        return IntStream.range(0, pulls)
                .map(pull -> pull % period)
                .map(place -> Math.min(place, period - 1 - place))
                .mapToObj(labels::get)
                .toList();
    }

    /**
     * Orders of blocks with so many change-overs: round and round (A B C A B), there and back (A B C B A), and with the reference
     * between (A B A C A).
     *
     * @param labels two or more
     * @param changeOvers of the whole day
     * @param each least change-overs of each label with the reference
     */
    static List<List<String>> blocks(List<String> labels, int changeOvers, int each) {
        int turn = 2 * (labels.size() - 1);
        Set<List<String>> orders = new LinkedHashSet<>();
        orders.add(order(changeOvers, block -> labels.get(block % labels.size())));
        orders.add(order(changeOvers, block -> labels.get(Math.min(block % turn, turn - block % turn))));
        orders.add(order(changeOvers, block -> labels.get(block % 2 == 0 ? 0 : 1 + block / 2 % (labels.size() - 1))));
        return orders.stream()
                .filter(order -> labels.stream()
                        .skip(1)
                        .allMatch(label -> ChangeOvers.between(order, label, labels.get(0)) >= each))
                .toList();
    }

    private static List<String> order(int changeOvers, IntFunction<String> label) {
        return IntStream.rangeClosed(0, changeOvers).mapToObj(label).toList();
    }

    /** Label of each pull, where the blocks are so long. */
    static List<String> pulls(List<String> blocks, List<Integer> runs) {
        List<String> pulls = new ArrayList<>();
        for (int block = 0; block < runs.size(); block++) {
            pulls.addAll(Collections.nCopies(runs.get(block), blocks.get(block)));
        }
        return List.copyOf(pulls);
    }
}
