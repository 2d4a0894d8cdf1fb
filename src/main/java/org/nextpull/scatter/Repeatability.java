package org.nextpull.scatter;

import java.util.List;
import java.util.Optional;

/**
 * What the repeats of a day say.
 *
 * @param scatter from settings that were remade, after drift; empty without repeats
 * @param drift only where a setting was repeated apart in time
 * @param repeats the groups of pulls that it rests on
 */
public record Repeatability(Optional<Scatter> scatter, Optional<Drift> drift, List<Group> repeats) {
    public Repeatability {
        repeats = List.copyOf(repeats);
    }

    public static Repeatability unknown() {
        return new Repeatability(Optional.empty(), Optional.empty(), List.of());
    }

    /**
     * Pulls that were run with one setting.
     *
     * @param pulls their numbers, two or more, in order
     */
    public record Group(List<Integer> pulls) {
        public Group {
            pulls = List.copyOf(pulls);
        }
    }

    /**
     * Slow change over the day that no setting explains.
     *
     * @param percentPerPull change of the response a pull, in percent of the level
     * @param standardError its standard error, in the same unit
     */
    public record Drift(double percentPerPull, double standardError) {}
}
