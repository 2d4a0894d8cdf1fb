package org.nextpull.compare;

import java.util.List;

/** How often a day went over from one label to another and back. */
final class ChangeOvers {
    /** After one change-over nobody can tell whether the label or the day has changed. */
    static final int LEAST = 2;

    private ChangeOvers() {}

    /** Changes between two labels, as if the others had not run. */
    static int between(List<String> ran, String one, String other) {
        return of(ran.stream()
                .filter(label -> label.equals(one) || label.equals(other))
                .toList());
    }

    /** How often the label differs from that of the pull before. */
    static int of(List<String> ran) {
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
        return between(ran, one, other) >= LEAST;
    }
}
