package org.nextpull.scatter;

import java.util.List;

/**
 * Pulls that were run with one setting.
 *
 * @param pulls their numbers, two or more, in order
 */
public record RepeatGroup(List<Integer> pulls) {
    public RepeatGroup {
        pulls = List.copyOf(pulls);
    }
}
