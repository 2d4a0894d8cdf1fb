package org.nextpull.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** In which order labels are pulled, the reference first, and how often a day goes over from one to another and back. */
final class PullOrder {
    /** After one change-over nobody can tell whether the label or the day has changed. */
    static final int LEAST_CHANGE_OVERS = 2;

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
                        .allMatch(label -> changeOversBetween(order, label, labels.get(0)) >= each))
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

    /** Changes between two labels, as if the others had not run. */
    static int changeOversBetween(List<String> ran, String one, String other) {
        return changeOvers(ran.stream()
                .filter(label -> label.equals(one) || label.equals(other))
                .toList());
    }

    /** How often the label differs from that of the pull before. */
    static int changeOvers(List<String> ran) {
        int changes = 0;
        for (int pull = 1; pull < ran.size(); pull++) {
            if (!ran.get(pull).equals(ran.get(pull - 1))) {
                changes++;
            }
        }
        return changes;
    }

    /** Whether a verdict on the two may rest on this order. */
    static boolean suffice(List<String> ran, String one, String other) {
        return changeOversBetween(ran, one, other) >= LEAST_CHANGE_OVERS;
    }
}
