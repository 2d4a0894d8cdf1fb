package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

/** Runs of neighbours in a ranking between which nothing differs. */
final class Groups {
    private Groups() {}

    /** The longest runs, none within another; a label that differs from both neighbours stands alone. */
    static List<List<String>> of(List<String> ranking, BiPredicate<String, String> differ) {
        List<List<String>> groups = new ArrayList<>();
        int covered = 0;
        for (int first = 0; first < ranking.size(); first++) {
            int end = first + 1;
            while (end < ranking.size() && noneDiffers(ranking.subList(first, end), ranking.get(end), differ)) {
                end++;
            }
            if (end > covered) {
                groups.add(ranking.subList(first, end));
                covered = end;
            }
        }
        return List.copyOf(groups);
    }

    private static boolean noneDiffers(List<String> group, String next, BiPredicate<String, String> differ) {
        return group.stream().noneMatch(label -> differ.test(label, next));
    }
}
