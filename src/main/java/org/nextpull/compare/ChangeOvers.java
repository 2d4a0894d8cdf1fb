package org.nextpull.compare;

import java.util.List;

/** How often a day went over from one label to another and back. */
final class ChangeOvers {
    /** After one change-over nobody can tell whether the label or the day has changed. */
    static final int LEAST = 2;

    private ChangeOvers() {}

    /** Changes between two labels, as if the others had not run. */
    static int between(List<String> ran, String one, String other) {
        List<String> both = ran.stream()
                .filter(label -> label.equals(one) || label.equals(other))
                .toList();
        int changes = 0;
        for (int pull = 1; pull < both.size(); pull++) {
            if (!both.get(pull).equals(both.get(pull - 1))) {
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
