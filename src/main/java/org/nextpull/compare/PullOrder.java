package org.nextpull.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/** In which order labels are pulled. */
public enum PullOrder {
    /** There and back: A B B A, A B C C B A. A straight drift cancels within each block. */
    THERE_AND_BACK {
        @Override
        public List<String> of(List<String> labels, int pulls) {
            int period = 2 * labels.size();
            return IntStream.range(0, pulls)
                    .map(pull -> pull % period)
                    .map(place -> Math.min(place, period - 1 - place))
                    .mapToObj(labels::get)
                    .toList();
        }
    },
    /** Two labels with two change-overs: A A B B B B A A. A straight drift cancels, a bow does not. */
    TWO_CHANGE_OVERS {
        @Override
        public List<String> of(List<String> labels, int pulls) {
            int ends = pulls / 4;
            return blocks(labels, ends, pulls / 2, pulls - pulls / 2 - ends);
        }
    },
    /** Two labels with three change-overs: A A B B B B A A A A B B, the ends so long that a straight drift all but cancels. */
    THREE_CHANGE_OVERS {
        @Override
        public List<String> of(List<String> labels, int pulls) {
            int each = pulls / 2;
            int end = Math.max(1, (int) Math.round(END_PART * each));
            return blocks(labels, end, each - end, each - end, pulls - 2 * each + end);
        }
    };

    private static final double END_PART = 0.3;

    private static List<String> blocks(List<String> labels, int... lengths) {
        List<String> order = new ArrayList<>();
        for (int block = 0; block < lengths.length; block++) {
            order.addAll(Collections.nCopies(lengths[block], labels.get(block % 2)));
        }
        return List.copyOf(order);
    }

    /**
     * The first {@code pulls} labels in this order.
     *
     * @param labels two or more, the reference first; for an order with a number of change-overs two
     * @param pulls of all labels together, at least 0
     */
    public abstract List<String> of(List<String> labels, int pulls);
}
