package org.nextpull.compare;

import java.util.ArrayList;
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
    /** One label after the other: A A B B. Fewest changes, and drift is hard to tell from difference. */
    BLOCKS {
        @Override
        public List<String> of(List<String> labels, int pulls) {
            List<String> order = new ArrayList<>();
            for (int pull = 0; pull < pulls; pull++) {
                order.add(labels.get(pull * labels.size() / pulls));
            }
            return List.copyOf(order);
        }
    };

    /** The first {@code pulls} labels in this order. */
    public abstract List<String> of(List<String> labels, int pulls);
}
